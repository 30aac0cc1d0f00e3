import {
  ALL_MARGINS,
  type CombineFault,
  type CombineGoal,
  type CombineProblem,
  type Requirement,
  WORST_MARGIN,
} from './model.js';

/** Above this, combinations could no longer be counted exactly. */
const MOST = Number.MAX_SAFE_INTEGER;

/** How many combinations there are before anything is asked of them. */
export const rawCount = ({ dimensions }: Pick<CombineProblem, 'dimensions'>): number =>
  dimensions.reduce((product, { size }) => product * size, 1);

/** First thing that is wrong with a problem, or undefined. */
export function faultOf(problem: CombineProblem): CombineFault | undefined {
  const { dimensions, requirements, goals, keep } = problem;
  if (dimensions.length === 0) return { code: 'nothing-to-choose' };
  const empty = dimensions.find(({ size }) => !(Number.isInteger(size) && size > 0));
  if (empty) return { code: 'no-options', dimension: empty.name };
  if (!Number.isInteger(keep) || keep < 1) return { code: 'keep-not-whole', given: keep };
  const raw = rawCount(problem);
  if (raw > MOST) return { code: 'too-many', raw };
  for (const one of requirements) {
    const fault = requirementFault(one, problem);
    if (fault) return fault;
  }
  for (const one of goals) {
    const fault = goalFault(one, problem);
    if (fault) return fault;
  }
  return rankingFault(problem);
}

function requirementFault(one: Requirement, { dimensions }: CombineProblem): CombineFault | undefined {
  const { name, base, terms, low, high, scale } = one;
  const ends = [low, high].filter((end) => end !== undefined);
  if (!Number.isFinite(base) || ends.some((end) => !Number.isFinite(end))) return { code: 'not-a-number', where: name };
  if (low !== undefined && high !== undefined && low > high)
    return { code: 'window-upside-down', requirement: name, low, high };
  if (!(scale > 0 && Number.isFinite(scale))) return { code: 'scale-not-positive', requirement: name };
  for (const { of, table } of terms) {
    const where = `${name}: ${of.map((at) => dimensions[at]?.name ?? `dimension ${at}`).join(' and ')}`;
    const needed = of.reduce((product, at) => product * (dimensions[at]?.size ?? Number.NaN), 1);
    if (table.length !== needed) return { code: 'table-size', where, given: table.length, needed };
    for (let at = 0; at < table.length; at += 1)
      if (!Number.isFinite(table[at])) return { code: 'not-a-number', where };
  }
  return undefined;
}

function goalFault({ name, values }: CombineGoal, { dimensions }: CombineProblem): CombineFault | undefined {
  for (const [at, { name: dimension, size }] of dimensions.entries()) {
    const own = values[at] ?? [];
    if (own.length !== size)
      return { code: 'table-size', where: `${name}: ${dimension}`, given: own.length, needed: size };
    if (!own.every((value) => Number.isSafeInteger(value))) return { code: 'goal-not-whole', goal: name, dimension };
  }
  return undefined;
}

function rankingFault({ goals, rankings }: CombineProblem): CombineFault | undefined {
  const known = new Set([WORST_MARGIN, ALL_MARGINS, ...goals.map(({ name }) => name)]);
  for (const { name, by } of rankings) {
    const goal = by.find((one) => !known.has(one));
    if (goal !== undefined) return { code: 'unknown-goal', ranking: name, goal };
  }
  return undefined;
}

/** One clear line for a refusal. */
export function describeCombineFault(fault: CombineFault): string {
  switch (fault.code) {
    case 'nothing-to-choose':
      return 'there is nothing to choose: name at least one thing that can be bought, cut or moved';
    case 'no-options':
      return `${fault.dimension}: there is nothing to choose from; at least one option is needed`;
    case 'not-a-number':
      return `${fault.where}: a value is not a number; finite numbers are valid`;
    case 'table-size':
      return `${fault.where}: ${fault.given} values; ${fault.needed} are needed`;
    case 'window-upside-down':
      return `${fault.requirement}: the lower end ${fault.low} is above the upper end ${fault.high}`;
    case 'scale-not-positive':
      return `${fault.requirement}: what counts as one share of margin must be above 0`;
    case 'goal-not-whole':
      return `${fault.goal}: ${fault.dimension}: goals are counted in whole numbers`;
    case 'unknown-goal':
      return `${fault.ranking}: ${fault.goal} is no goal`;
    case 'keep-not-whole':
      return `combinations kept: ${fault.given}; a whole number of 1 or more is valid`;
    case 'too-many':
      return `${fault.raw} combinations are more than can be counted exactly; leave out options or take larger steps`;
  }
}
