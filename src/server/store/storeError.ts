/** The store cannot be opened or used, with a reason that a person can act on. */
export class StoreError extends Error {
  override readonly name = 'StoreError';
}
