import type { ChainBreak } from '@gudgeon/core/record';

const WORDS: Readonly<Record<ChainBreak['code'], string>> = {
  altered: 'was changed after it was sealed',
  gap: 'has no entry before it: at least one is missing',
  twice: 'stands at a place that another entry of the same device has',
  link: 'does not follow from the entry before it',
};

/** One line for a person: which entry breaks the chain, and how. */
export function describeBreak({ code, device, counter, entry }: ChainBreak): string {
  return `Entry ${counter} of device ${device} (${entry}) ${WORDS[code]}.`;
}
