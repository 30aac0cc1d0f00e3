/** The medium failed: not the fault of the entries, and not ours. The message is one line fit for a person. */
export type StoreFailureCode =
  | 'locked'
  | 'full'
  | 'damaged'
  | 'read-only'
  | 'newer-schema'
  | 'not-a-log'
  | 'cannot-open'
  | 'target-exists'
  | 'failed';

export class StoreFailure extends Error {
  readonly code: StoreFailureCode;

  constructor(code: StoreFailureCode, message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = 'StoreFailure';
    this.code = code;
  }
}
