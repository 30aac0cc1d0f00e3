import { refusal } from '../app/refusal.js';

/** Names that appear in addresses and keys: letters, digits, dots, dashes and underscores, at most 100. */
const NAME = /^[A-Za-z0-9][A-Za-z0-9._-]{0,99}$/;

const isJobName = (text: unknown): text is string => typeof text === 'string' && NAME.test(text);

/** The job of an address, or a refusal that says how jobs are named. */
export function jobName(text: string): string {
  if (isJobName(text)) return text;
  throw refusal(400, 'bad-job', 'A job is named by letters, digits, dots and dashes, at most 100.');
}
