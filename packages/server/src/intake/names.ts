/** Names that appear in addresses and keys: letters, digits, dots, dashes and underscores, at most 100. */
const NAME = /^[A-Za-z0-9][A-Za-z0-9._-]{0,99}$/;

export const isJobName = (text: unknown): text is string => typeof text === 'string' && NAME.test(text);
