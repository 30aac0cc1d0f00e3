/**
 * What must hold before a reading can be believed, and what can hurt while it is taken. Common practice, no source; the
 * engine maker's manual comes first.
 */
import type { FeatureKind } from '../assess/index.js';
import { HAZARDS } from '../plan/index.js';
import type { Caution, Hindrance } from './views.js';

const turning: Caution = {
  word: 'WARNING',
  can: 'Turning parts catch fingers.',
  because: 'Crank and gears move everything that is joined to them.',
  act: 'Turn by hand, slowly, hands clear of webs and teeth.',
};
const caps: Caution = {
  word: 'NOTICE',
  can: 'A housing read with its cap loose or wrong way round is worth nothing.',
  because: 'The hole takes its shape only when the cap is drawn down.',
  act: 'Cap on its own place and way round, bolts at their torque, faces clean; shells out unless asked for.',
};

/** Hazards of reading one feature; `kind` left out: those of measuring at all. */
export function measureCautions(kind?: FeatureKind): readonly Caution[] {
  if (kind === undefined) return [HAZARDS.edges];
  const { figure } = kind;
  if (figure === 'spring') return [HAZARDS.springs];
  if (figure === 'backlash' || figure === 'float' || figure === 'runout') return [turning];
  if (figure === 'housing') return [HAZARDS.edges, caps];
  return ['bore', 'face', 'ring-gap', 'ring-groove', 'deck-height', 'protrusion'].includes(figure)
    ? [HAZARDS.edges]
    : [];
}

interface Ready {
  readonly temperature: boolean;
  readonly gauges: boolean;
  /** Names of gauges that were not held to a standard today. */
  readonly unchecked: readonly string[];
}
/** What to see to before readings are taken. It is asked for, not enforced: only the person knows what lies on the bench. */
export function beforeMeasuring({ temperature, gauges, unchecked }: Ready): readonly Hindrance[] {
  return [
    { code: 'clean', words: 'Parts are clean, dry and deburred: a hair or a burr is worth more than a tenth.' },
    {
      code: 'temperature',
      words: temperature
        ? 'Parts and gauges have lain side by side for some hours: they have the same temperature.'
        : 'Parts and gauges have the same temperature. Note it below, so that sizes can be told at 20 °C.',
    },
    ...(gauges
      ? []
      : [{ code: 'gauge', words: 'Say below which gauges you have: unit and smallest step go with each.' }]),
    ...(unchecked.length === 0
      ? []
      : [{ code: 'check', words: `Hold against a standard before you begin: ${unchecked.join(', ')}.` }]),
  ];
}
