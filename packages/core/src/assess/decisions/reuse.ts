/** D61: what is done with every part that is not surely within its limit: used again, repaired, or renewed; the record says who decided. */

import { PROPERTIES } from '../limits/index.js';
import type { Alternative, Assessment, Decision, Finding, VerdictWord } from '../model.js';
import { type Decider, decided, featureOf, figure, listed, possible, worstVerdict } from './decision.js';
import type { LengthWords } from './length-words.js';
import { forceWords, massWords, volumeWords } from './other-words.js';

/** Features whose fate a decision of their own settles: nothing is decided twice. */
const SERVED: ReadonlySet<string> = new Set([
  'cylinder-bore',
  'bore-ridge',
  'bore-wall',
  'main-journal',
  'crankpin',
  'main-shell',
  'rod-shell',
  'main-bearing',
  'rod-bearing',
  'piston',
  'piston-skirt',
  'piston-pin',
  'pin',
  'pin-bore',
  'small-end-bore',
  'ring-gap-top',
  'ring-gap-second',
  'ring-gap-third',
  'ring-gap-oil',
  'deck-flatness',
  'deck-height',
  'deck-clearance',
  'head-flatness',
  'head-thickness',
  'liner-protrusion',
  'piston-protrusion',
  'crank-end-float',
  'thrust-washer',
  'installed-height',
  'valve-guide',
  'valve-stem',
  'stem',
  'seat-width',
  'seat-runout',
  'valve-recess',
  'valve-margin',
  'piston-mass',
  'pin-mass',
  'rod-big-end-mass',
  'rod-small-end-mass',
  'rod-mass',
  'bolt-length',
  'bolt-hole-depth',
  'valve-lash',
]);
const featureOfProperty = (property: string): string => property.slice(0, property.indexOf('.'));

/** How a part of this kind is brought back, where the trade does so. Common practice, no source. */
const REPAIRS: Readonly<Record<string, string>> = {
  'main-housing': 'Bore the main line in one setting, caps cut first',
  'big-end-bore': 'Cut the caps and hone the big ends round',
  'small-end-bore': 'Renew the bushes and ream them to their pins',
  'crank-runout': 'Straighten the crankshaft, look for cracks before and after',
  'cam-runout': 'Straighten the camshaft',
  'rod-bend': 'Straighten the rods',
  'rod-twist': 'Straighten the rods',
  'spring-load-closed': 'Shim the springs (calculation selection.spring-load-shims)',
  'manifold-flatness': 'Mill the manifold face',
  'lifter-bore': 'Sleeve the lifter bores',
  'valve-face': 'Grind the valve faces',
  'face-runout': 'Grind the valve faces',
};

const NOT_GOOD: readonly VerdictWord[] = ['out', 'near', 'check again'];

function shown(finding: Finding, words: LengthWords): string {
  const value = finding.size?.value;
  if (value === undefined) return finding.words;
  const text = {
    length: () => words.sure(value, finding.size?.u),
    mass: () => massWords(value),
    force: () => forceWords(value, words),
    volume: () => volumeWords(value),
    angle: () => `${((value * 180) / Math.PI).toFixed(2)}°`,
    torque: () => `${value.toFixed(1)} N·m`,
  }[finding.measured]();
  return `${text}, ${finding.verdict}: ${finding.words}`;
}

function useAgain(findings: readonly Finding[], words: LengthWords): Alternative {
  return possible({
    id: 'use-again',
    words: 'Use them again as they are',
    figures: findings.map((one) => figure(one.placeName, shown(one, words))),
    verdict: worstVerdict(findings.map(({ verdict }) => verdict)),
    against: findings
      .filter(({ verdict }) => verdict === 'out')
      .map(
        ({ placeName, held }) =>
          `${placeName}: past ${held.find((one) => one.verdict === 'out')?.limit.from.text ?? 'its limit'}`,
      ),
  });
}

function repair(assessment: Assessment, property: string, findings: readonly Finding[]): readonly Alternative[] {
  const feature = featureOfProperty(property);
  const how = REPAIRS[feature];
  if (how === undefined) return [];
  const targets = findings.flatMap(({ place, held }) => {
    const window = (held.find(({ against }) => against === 'new') ?? held[0])?.window;
    return window === undefined ? [] : [{ place, window }];
  });
  const [first] = findings;
  return [
    possible({
      id: 'repair',
      words: `${how}: ${listed(findings.map(({ placeName }) => placeName))}`,
      figures: [figure('afterwards', 'measured again when it comes back')],
      verdict: 'no data',
      orders: [
        {
          id: `${property}/repair`,
          operation: how,
          part: featureOf(assessment, feature)?.kind.title.toLowerCase() ?? feature,
          property,
          places: targets.map(({ place }) => place),
          targets,
          ...(first === undefined ? {} : { measured: first.measured }),
          notes: [...new Set(findings.map(({ held }) => held[0]?.limit.from.text ?? ''))]
            .filter((text) => text !== '')
            .map((text) => `Limit: ${text}.`),
        },
      ],
    }),
  ];
}

function renew(assessment: Assessment, property: string, findings: readonly Finding[]): Alternative {
  const one =
    featureOf(assessment, featureOfProperty(property))?.kind.one ?? PROPERTIES.get(property)?.title ?? property;
  return possible({
    id: 'renew',
    words: `Renew the parts of ${listed(findings.map(({ placeName }) => placeName))}`,
    figures: [figure('parts', `${findings.length}`)],
    verdict: 'no data',
    against: ['new parts are measured too'],
    buys: [
      {
        part: `part for: ${one}`,
        size: 'standard',
        count: findings.length,
        for: listed(findings.map(({ placeName }) => placeName)),
      },
    ],
  });
}

/** Which of the three stands first: a part past its limit is not used again by default, one in doubt is measured again first. */
function ledgerLine(
  assessment: Assessment,
  property: string,
  findings: readonly Finding[],
  words: LengthWords,
): Decision {
  const title = findings[0]?.title ?? property;
  const out = findings.some(({ verdict }) => verdict === 'out');
  const again = findings.flatMap((one) => one.again ?? []);
  const stays = useAgain(findings, words);
  const work = [...repair(assessment, property, findings), renew(assessment, property, findings)];
  const area = featureOf(assessment, featureOfProperty(property))?.kind.area ?? 'assembly';
  return decided(
    {
      id: 'reuse',
      scope: property,
      title: `Used again? ${title}`,
      question: `What is done where ${title} is not surely within its limit?`,
      area,
      sources: ['shop-practice'],
    },
    {
      alternatives: out ? [...work, stays] : [stays, ...work],
      proof: out ? 'At least one is past its limit.' : 'None is surely past its limit, and none is surely within it.',
      working: findings.map((one) => `${one.placeName}: ${shown(one, words)}`),
      cautions: [
        ...(again.length > 0
          ? [`Measure again first: ${[...new Set(again.map(({ name }) => name))].join('; ')}.`]
          : []),
        'Who decides signs with name and reason; the engine maker’s manual outranks a feeling for the part.',
      ],
    },
  );
}

/** One line of the ledger for each property with a part that is out or in doubt and that no other decision settles. */
export const reuse: Decider = (assessment, words) => {
  const byProperty = new Map<string, Finding[]>();
  for (const finding of assessment.findings) {
    if (!NOT_GOOD.includes(finding.verdict) || SERVED.has(featureOfProperty(finding.property))) continue;
    byProperty.set(finding.property, [...(byProperty.get(finding.property) ?? []), finding]);
  }
  return [...byProperty].map(([property, findings]) => ledgerLine(assessment, property, findings, words));
};
