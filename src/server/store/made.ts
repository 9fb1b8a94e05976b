/** What came of making a record under an id that the client may have chosen. */
export interface Made<Content> {
  /** `new`: made now. `same`: this id already holds the same content, so the request was a repeated one. `taken`: it holds other content. */
  readonly outcome: 'new' | 'same' | 'taken';
  readonly record: Content;
}
