/** What every way of listening to a thermometer tells, and how it is left. */

export interface SourceListener {
  /**
   * What the thermometer sent: a number, a text that may be one, or nothing.
   *
   * @param from the device whose token was shown with it, where one was
   */
  value(raw: number | string | null, from?: string): void;
  /** Something came that is no reading of now. */
  passedOver(reason: string): void;
  state(state: 'connecting' | 'waiting' | 'gone' | 'failing', reason?: string): void;
}

export interface Source {
  stop(): Promise<void>;
}
