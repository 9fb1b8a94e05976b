/** What may be set about alarms, for each kitchen; first values of our own. */

/** How long before a limit an alarm must come for the cook to get there in time. */
export interface LeadTime {
  readonly noticeS: number;
  readonly walkS: number;
  readonly actS: number;
  /** From the act until the syrup feels it. */
  readonly panLagS: number;
  readonly margin: number;
}

/** For a pan that is taken off the ring; half as much again for margin, as in tutorials on ISA-18.2. */
export const usualLeadTime: LeadTime = { noticeS: 10, walkS: 15, actS: 10, panLagS: 25, margin: 1.5 };

/** 1.5 x (notice + walk + act + pan lag), s. */
export function leadTimeS({ noticeS, walkS, actS, panLagS, margin }: LeadTime): number {
  return margin * (noticeS + walkS + actS + panLagS);
}

/** The same, to be read: `1.5 x (10 + 15 + 10 + 25) s = 90 s`. */
export function leadTimeSum(lead: LeadTime): string {
  const { noticeS, walkS, actS, panLagS, margin } = lead;
  return `${margin} x (${noticeS} + ${walkS} + ${actS} + ${panLagS}) s = ${Math.round(leadTimeS(lead))} s`;
}

export interface AlarmSettings {
  readonly lead: LeadTime;
  /** Without a touch for so long the cook is asked whether they are there (to be set from 180 to 900), and has so long to answer, s. */
  readonly askAfterS: number;
  readonly answerWithinS: number;
}

export const usualAlarmSettings: AlarmSettings = { lead: usualLeadTime, askAfterS: 600, answerWithinS: 60 };
