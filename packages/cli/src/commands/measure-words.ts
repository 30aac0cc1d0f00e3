import type { Assessment, Feature, InspectionPlan, VerdictWord } from '@gudgeon/core/assess';
import type { Engine } from '@gudgeon/core/engine';
import { type FindingView, findingView, type ShownIn } from '@gudgeon/core/workbench';

const readingsOf = ({ places }: Feature): number => places.reduce((sum, { stations }) => sum + stations.length, 0);
const countOf = (plan: InspectionPlan): number => plan.features.reduce((sum, one) => sum + readingsOf(one), 0);
const counted = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;

/** The plan as data: every feature with its places and the readings of each. */
export const planAsJson = (engine: Engine, plan: InspectionPlan) => ({
  engine: engine.name,
  readings: countOf(plan),
  features: plan.features.map((feature) => ({
    id: feature.kind.id,
    title: feature.kind.title,
    area: feature.kind.area,
    measured: feature.kind.measured,
    instrument: feature.kind.instrument,
    condition: feature.kind.condition,
    how: feature.kind.how,
    readings: readingsOf(feature),
    places: feature.places.map(({ id, name, stations, expected }) => ({
      id,
      name,
      readings: stations.map((station) => ({ id: station.id, name: station.name })),
      ...(expected && { expected }),
    })),
  })),
  missing: plan.missing,
  assumptions: plan.assumptions ?? [],
});

/** The plan as a list, area by area. */
export function planAsText(engine: Engine, plan: InspectionPlan): string {
  const lines = [`${engine.name}: ${counted(plan.features.length, 'feature')}, ${counted(countOf(plan), 'reading')}`];
  let area = '';
  for (const feature of plan.features) {
    if (feature.kind.area !== area) {
      area = feature.kind.area;
      lines.push('', area);
    }
    const { id, title, instrument } = feature.kind;
    const count = `${counted(feature.places.length, 'place')}, ${counted(readingsOf(feature), 'reading')}`;
    lines.push(`  ${id.padEnd(28)} ${title}: ${count}; ${instrument.replaceAll('-', ' ')}`);
  }
  if (plan.missing.length > 0) lines.push('', 'not placed:');
  for (const { feature, why } of plan.missing) lines.push(`  ${feature}: ${why}`);
  if ((plan.assumptions ?? []).length > 0) lines.push('', 'taken for granted:');
  for (const { feature, words } of plan.assumptions ?? []) lines.push(`  ${feature}: ${words}`);
  return lines.join('\n');
}

const VERDICTS: readonly VerdictWord[] = ['out', 'check again', 'near', 'in', 'no data'];
const countsOf = ({ findings }: Assessment): Readonly<Record<string, number>> =>
  Object.fromEntries(VERDICTS.map((word) => [word, findings.filter(({ verdict }) => verdict === word).length]));
const slotsRead = ({ readings }: Assessment): number => readings.bySlot.size;

/** Findings as data, those without readings too: no data never counts as good. */
export const findingsAsJson = (assessment: Assessment, questions: readonly string[], shown: ShownIn) => ({
  engine: assessment.engine.name,
  readings: slotsRead(assessment),
  questions,
  verdicts: countsOf(assessment),
  findings: assessment.findings.map((finding) => findingView(finding, shown)),
});

function lineOf(view: FindingView): string {
  const value = [view.value, view.doubt].filter((text) => text !== '').join(' ');
  const limits = [view.limit, view.wearLimit === undefined ? '' : `wear ${view.wearLimit}`].filter(
    (text) => text !== '',
  );
  const against = limits.length === 0 ? view.words : `${limits.join(', ')} (${view.origin}); ${view.words}`;
  return `  ${view.verdict.toUpperCase().padEnd(11)} ${view.place}, ${view.title}: ${value}; ${against}`;
}

/** What has been read and what follows, worst first; what has not been read is counted. */
export function findingsAsText(assessment: Assessment, questions: readonly string[], shown: ShownIn): string {
  const views = assessment.findings.map((finding) => findingView(finding, shown));
  const counts = countsOf(assessment);
  const lines = [
    `${assessment.engine.name}: ${counted(slotsRead(assessment), 'reading')}`,
    VERDICTS.map((word) => `${word} ${counts[word]}`).join(', '),
  ];
  for (const word of VERDICTS.filter((one) => one !== 'no data')) {
    lines.push(...views.filter(({ verdict }) => verdict === word).map(lineOf));
  }
  lines.push(...views.filter(({ verdict, value }) => verdict === 'no data' && value !== '').map(lineOf));
  if (questions.length > 0) lines.push('', 'to look at again:', ...questions.map((question) => `  ${question}`));
  return lines.join('\n');
}
