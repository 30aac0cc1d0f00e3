/** Why a batch was refused. `index` counts the batch from 0 and points at the entry that could not be added. */
interface AtEntry {
  readonly index: number;
  readonly id: string;
  readonly job: string;
  readonly device: string;
}
/** The id is held already with other content. */
export interface IdReused extends AtEntry {
  readonly code: 'id-reused';
  readonly heldHash: string;
  readonly givenHash: string;
}
/** The device's next counter in this job is `expected`; a later one came. */
export interface CounterGap extends AtEntry {
  readonly code: 'counter-gap';
  readonly expected: number;
  readonly given: number;
}
/** Another entry of this device in this job has the same counter: the device's log has forked. */
export interface CounterTaken extends AtEntry {
  readonly code: 'counter-taken';
  readonly given: number;
  readonly expected: number;
  readonly heldBy: string;
}
/** `previous` is not the hash of the device's entry before this one. */
export interface ChainBroken extends AtEntry {
  readonly code: 'chain-broken';
  readonly counter: number;
  readonly expected: string;
  readonly given: string;
}
export type AppendFault = IdReused | CounterGap | CounterTaken | ChainBroken;

const short = (hash: string) => `${hash.slice(0, 12)}…`;

/** One clear line for a person: which entry, what is wrong, what would be right. */
export function describeAppendFault(fault: AppendFault): string {
  const where = `Entry ${fault.index + 1} of the batch (${fault.id}, device ${fault.device}, job ${fault.job})`;
  switch (fault.code) {
    case 'id-reused':
      return `${where}: this id is in the log with other content (hash ${short(fault.heldHash)}, sent ${short(fault.givenHash)}); a new entry needs a new id.`;
    case 'counter-gap':
      return `${where}: counter ${fault.given} came where ${fault.expected} is next; send the entries between first.`;
    case 'counter-taken':
      return `${where}: counter ${fault.given} belongs to entry ${fault.heldBy}; the next free counter of this device is ${fault.expected}.`;
    case 'chain-broken':
      return `${where}: its previous hash is ${short(fault.given)} where ${short(fault.expected)} is expected at counter ${fault.counter}.`;
  }
}
