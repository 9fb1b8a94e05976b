/** A day in words, the same in every place: `12 September 2031`. */
export function dayText(at: string): string {
  return new Date(at).toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}
