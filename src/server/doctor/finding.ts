/** What a look at one thing came to. */
export interface Finding {
  readonly name: string;
  /** mind: works, but not as well as it might. wrong: something does not work, or may be lost. */
  readonly state: 'well' | 'mind' | 'wrong';
  readonly found: string;
  /** What to do about it. */
  readonly advice?: string;
}

export const well = (name: string, found: string): Finding => ({ name, state: 'well', found });
export const mind = (name: string, found: string, advice: string): Finding => ({ name, state: 'mind', found, advice });
export const wrong = (name: string, found: string, advice: string): Finding => ({
  name,
  state: 'wrong',
  found,
  advice,
});
