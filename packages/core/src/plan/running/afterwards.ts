/** What is looked at, tightened and set once more after the run-in: only what a maker asks for. */
import type { Engine } from '../../engine/model.js';
import { traitsOf } from '../work/traits.js';
import { COMMON_PRACTICE } from './schedules.js';

export interface Afterwards {
  readonly id: 'oil-and-filter' | 'head' | 'lash' | 'spark' | 'joints';
  readonly words: string;
  readonly origin: string;
  /** `look-up`: nothing is done until its maker has been asked. */
  readonly do: 'do' | 'never' | 'look-up';
}

/**
 * Oil and filter, head bolts, valve lash hot or cold, timing, outside joints. Head bolts are turned again only where the sheet passes on that the maker of
 * the gasket asks for it; where it says nothing they stay, and the maker's own words are to be looked up. Hydraulic lifters are not set again.
 */
export function afterRunIn(engine: Engine): readonly Afterwards[] {
  return [
    {
      id: 'oil-and-filter',
      words:
        'Change oil and filter. Cut the filter open and spread the pleats; draw a magnet through the oil: fuzz is usual, splinters and flakes are not.',
      origin: COMMON_PRACTICE,
      do: 'do',
    },
    headAgain(engine),
    ...lashAgain(engine),
    ...sparkAgain(engine),
    {
      id: 'joints',
      words: 'Cold: go round intake, exhaust and hose clamps. Hot: look for leaks.',
      origin: COMMON_PRACTICE,
      do: 'do',
    },
  ];
}

const WHEN = {
  'cold-after-first-heat':
    'cold, after the first heat: one bolt at a time, in the order of tightening, each slackened a little before it is brought up again',
  'hot-after-first-heat': 'hot, right after the first heat, in the order of tightening',
  'at-first-service': 'at the first service, as the maker says',
} as const;
function headAgain({ running }: Engine): Afterwards {
  const again = running?.headAgain;
  if (again === undefined) {
    return {
      id: 'head',
      words:
        'Head bolts: the sheet does not say. They stay as they are until the gasket maker’s own words have been read.',
      origin: 'not stated',
      do: 'look-up',
    };
  }
  const more = again.text === undefined ? '' : ` (${again.text})`;
  const origin = again.from.text;
  if (again.when === 'never')
    return { id: 'head', words: `Head bolts are not tightened again${more}.`, origin, do: 'never' };
  return { id: 'head', words: `Head bolts again, ${WHEN[again.when]}${more}.`, origin, do: 'do' };
}

function lashAgain({ valveGear: gear }: Engine): readonly Afterwards[] {
  if (gear === undefined)
    return [
      {
        id: 'lash',
        words: 'Valve lash: the sheet does not describe the valve gear.',
        origin: 'not stated',
        do: 'look-up',
      },
    ];
  if (gear.adjustment === 'hydraulic')
    return [
      {
        id: 'lash',
        words: 'Hydraulic lifters are not set again; listen for one that ticks.',
        origin: COMMON_PRACTICE,
        do: 'never',
      },
    ];
  const { lash } = gear;
  const figure = (heat: 'hot' | 'cold') => {
    const [intake, exhaust] = [lash?.intake[heat], lash?.exhaust[heat]];
    return intake || exhaust
      ? {
          text: `${heat}: intake ${intake?.text ?? 'not stated'}, exhaust ${exhaust?.text ?? 'not stated'}`,
          from: (intake ?? exhaust)!.from.text,
        }
      : undefined;
  };
  const figures = [figure('hot'), figure('cold')].filter((one) => one !== undefined);
  if (figures.length === 0)
    return [
      {
        id: 'lash',
        words: 'Valve lash: the sheet gives no figure; look it up before anything is turned.',
        origin: 'not stated',
        do: 'look-up',
      },
    ];
  return [
    {
      id: 'lash',
      words: `Read the lash again, ${figures.map((one) => one.text).join('; ')}. A figure for one state says nothing of the other.`,
      origin: [...new Set(figures.map((one) => one.from))].join('; '),
      do: 'do',
    },
  ];
}

function sparkAgain(engine: Engine): readonly Afterwards[] {
  if (traitsOf(engine).get('petrol') === 'no') return [];
  const advance = engine.running?.ignition?.staticAdvance;
  const figure = advance === undefined ? '' : ` (${advance.text})`;
  return [
    {
      id: 'spark',
      words: `Read the timing at the proved mark${figure}, lock the clamp, read it once more.`,
      origin: advance?.from.text ?? COMMON_PRACTICE,
      do: 'do',
    },
  ];
}
