/** Every derived size and clearance with its verdict, what to measure again first, and the decisions that follow. */
import type { Area, Assessment, VerdictWord } from '../assess/index.js';
import { assessmentOf } from './assessment.js';
import type { Bench } from './bench.js';
import { decisionViews } from './decision-view.js';
import { findingView } from './finding-view.js';
import { areaOf, goodPartsBadFit } from './finding-words.js';
import { areaTitle, readAgain } from './measure-view.js';
import type { FindingView, FitView, ShownIn } from './measure-views.js';
import type { Standing } from './standings.js';
import type { Caution } from './views.js';

/** In the order in which parts are put together. */
const AREAS: readonly Area[] = [
  'block',
  'crankshaft',
  'rods',
  'pistons',
  'rings',
  'camshaft',
  'followers',
  'heads',
  'valves',
  'springs',
  'assembly',
];

/** Everything under Fit, computed whole from engine and log; lengths in the unit of the device. */
export function fitView(bench: Bench, shownIn: ShownIn): FitView {
  const assessment = assessmentOf(bench);
  return {
    findings: byArea(assessment, shownIn),
    counts: countsOf(assessment),
    again: readAgain(bench, assessment),
    // Asked for last: the search for the best parts takes longer than everything else together.
    get decisions() {
      return decisionViews(bench, shownIn);
    },
    contradictions: bench.engine.cautions.map(({ message }) => message),
    cautions: CAUTIONS,
  };
}

const CAUTIONS: readonly Caution[] = [
  {
    word: 'NOTICE',
    can: 'A cut cannot be undone.',
    because: 'Every order rests on the readings that stand here.',
    act: 'Read again what decides before the work is sent out; the maker’s manual outranks every computed figure.',
  },
];

function byArea(assessment: Assessment, shownIn: ShownIn): FitView['findings'] {
  const rows = new Map<Area, FindingView[]>(AREAS.map((area) => [area, []]));
  for (const finding of assessment.findings)
    rows.get(areaOf(finding.property))?.push(findingView(finding, shownIn, goodPartsBadFit(assessment, finding)));
  return [...rows]
    .filter(([, list]) => list.length > 0)
    .map(([area, list]) => ({ area, title: areaTitle(area), rows: list }));
}

function countsOf({ findings }: Assessment): FitView['counts'] {
  const counts: Record<VerdictWord, number> = { in: 0, near: 0, out: 0, 'no data': 0, 'check again': 0 };
  for (const { verdict } of findings) counts[verdict] += 1;
  return counts;
}

/** How far Fit has come, in few words, for the list of ways: what is out before what is only unknown. */
export function fitStanding(bench: Bench): Standing {
  const assessment = assessmentOf(bench);
  const { out, near, 'check again': again, 'no data': unknown } = countsOf(assessment);
  const of = assessment.findings.length;
  const parts = [
    [out, 'out'],
    [near + again, 'near or to check again'],
    [unknown, 'without data'],
  ] as const;
  const words = parts.flatMap(([count, what]) => (count === 0 ? [] : [`${count} ${what}`]));
  const done = of - unknown;
  return {
    progress: { done, of, words: words.length === 0 ? `all ${of} in` : words.join(', ') },
    finished: of > 0 && words.length === 0,
  };
}
