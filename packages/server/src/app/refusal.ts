/** An expected refusal on its way to the client: a status, a stable code, and one line for a person. */
export class Refusal extends Error {
  readonly statusCode: number;
  readonly code: string;

  constructor(statusCode: number, code: string, message: string) {
    super(message);
    this.statusCode = statusCode;
    this.code = code;
  }
}

export const refusal = (statusCode: number, code: string, message: string) => new Refusal(statusCode, code, message);
