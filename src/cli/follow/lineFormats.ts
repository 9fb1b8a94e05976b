/** What lines look like, for the help. */
import { pairs } from '../table.ts';

export const lineFormats = `
A line in is a JSON object: "t", seconds since the cook began, and one of
${pairs([
  ['"reading": 131.2, "unit": "Cel"', 'the thermometer; unit Cel, [degF] or K; "byHand": true if typed'],
  ['"heat": 3', 'the dial was set'],
  ['"spoonfuls": 1', 'cold water was added; in letting down it is hot'],
  ['"water": "5mL"', 'the same, measured'],
  ['"alkali": 1', 'so many parts of the plan’s alkali went in'],
  ['"step": "brown"', 'a step of the plan began'],
  ['"poured": true', 'the cook is over'],
  ['"weight": 0.43', 'contents of the pan, kg'],
  ['"spoonColour": 2.1', 'a drop against swatches, A430 of a 10 % w/w solution'],
  ['"dilutionPh": 5.2', 'pH of a cooled dilution'],
  ['"solids": 0.95', 'by refractometer, counted back to the syrup, share of one'],
])}
A late line goes to the place of its time. What else an object holds is let pass.

A line out, for each line in, in its order: ranges are the 10, 50 and 90 % marks.
${pairs([
  ['line, t', 'number of the line in; newest time told, s'],
  ['temperature_Cel, water_%, inverted_%, pH', 'low, mid and high of the syrup; pH hot'],
  ['a430, ebc', 'colour of a 10 % w/w solution'],
  ['surprise, used', 'observed less expected, in standard deviations; taken or held back; null for deeds'],
  ['step, held_min', 'step under way; minutes held that count, at the middle of its band'],
  ['advice', 'kind; deeds in words; urgency: act now, act soon, next, go on; expected_Cel in'],
  ['', '3 min at most; leavesBand: chance within a minute; minutesLeft; null after the pour'],
])}
A bad line gives one line of JSON on standard error: line, field, value, allowed, message; the others go on.
Exit codes: 0 done, 1 the kitchen can't do it, 2 misused or a line was bad, 7 refused because it breaks a limit of safety.
It advises; it doesn't watch the stove.

Example:
  printf '%s\\n' '{"t": 0, "heat": 7}' '{"t": 60, "reading": 75.2, "unit": "[degF]"}' | umberpan follow --mass 400g`;
