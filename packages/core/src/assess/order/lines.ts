/** The order to the machine shop and the parts list, gathered from the choices that stand. */
import type { BuyLine, Choice, OrderLine, Readings } from '../model.js';

/** A line with the choice that asked for it. */
export interface OrderedLine {
  readonly line: OrderLine;
  readonly choice: Choice;
}

/**
 * Lines of all standing choices in the order in which they were decided. A line id is a piece of work: where a later choice asks for
 * the same work, its line replaces the earlier one.
 */
export function orderLines({ choices }: Readings): readonly OrderedLine[] {
  const byId = new Map<string, OrderedLine>();
  for (const choice of choices) {
    for (const line of choice.orders) {
      byId.delete(line.id);
      byId.set(line.id, { line, choice });
    }
  }
  return [...byId.values()];
}

/** Parts of all standing choices; the same part in the same size is one line, its counts summed. */
export function partsList({ choices }: Readings): readonly BuyLine[] {
  const byPart = new Map<string, BuyLine>();
  for (const buy of choices.flatMap(({ buys }) => buys)) {
    const key = JSON.stringify([buy.part, buy.partNumber ?? '', buy.size]);
    const before = byPart.get(key);
    byPart.set(key, before === undefined ? buy : together(before, buy));
  }
  return [...byPart.values()].filter(({ count }) => count > 0);
}

function together(one: BuyLine, other: BuyLine): BuyLine {
  const uses = new Set([...one.for.split('; '), other.for]);
  return { ...one, count: one.count + other.count, for: [...uses].join('; ') };
}
