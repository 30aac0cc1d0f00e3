/** Separation of the lobes of one cylinder, as degreed. */
import { type Part, toldSurely } from './answering.js';
import type { LobeDegreed } from './degreeing-model.js';
import { figure } from './makeup.js';
import type { AnsweredFigure, Makeup } from './model.js';
import { signedCentreline } from './timing-lobes.js';

/**
 * Half of intake plus exhaust centreline, in cam angle, for every cylinder of which both were read; lobes of one kind count by their mean. The
 * dead centre shifts both centrelines the other way, so its doubt falls out.
 */
export function separations(makeup: Makeup, lobes: readonly LobeDegreed[]): Part {
  const cylinders = [...new Set(lobes.map(({ lobe }) => lobe.cylinder))];
  const figures = cylinders.flatMap((cylinder): readonly AnsweredFigure[] => {
    const [intake, exhaust] = (['intake', 'exhaust'] as const).map((kind) => meanOf(lobes, cylinder, kind));
    if (intake === undefined || exhaust === undefined) return [];
    const own: AnsweredFigure = {
      key: 'separation',
      name: 'lobe separation, cam angle',
      quantity: 'angle',
      value: (intake.value + exhaust.value) / 2,
      u: Math.hypot(intake.u, exhaust.u) / 2,
      cylinder,
    };
    const wanted = wantedOf(makeup);
    if (wanted === undefined) return [own];
    return [own, { ...own, key: 'wider-than-card', name: 'separation wider than the card', value: own.value - wanted }];
  });
  return {
    figures,
    computed: [],
    working: figures.map(
      ({ name, cylinder, value, u }) =>
        `cylinder ${cylinder}: ${name} ${toldSurely('angle', { value, ...(u !== undefined && { u }) })}`,
    ),
  };
}

function meanOf(lobes: readonly LobeDegreed[], cylinder: number, kind: 'intake' | 'exhaust') {
  const own = lobes.flatMap(({ lobe, middle }) =>
    middle !== undefined && lobe.cylinder === cylinder && lobe.kind === kind ? [middle] : [],
  );
  if (own.length === 0) return undefined;
  return {
    value: signedCentreline(kind, own.reduce((sum, { value }) => sum + value, 0) / own.length),
    u: Math.hypot(...own.map(({ uOfReadings }) => uOfReadings)) / own.length,
  };
}

function wantedOf(makeup: Makeup): number | undefined {
  const [intake, exhaust] = (['intake', 'exhaust'] as const).map(
    (kind) => figure(makeup, 'centreline-wanted', kind)?.value,
  );
  return intake === undefined || exhaust === undefined ? undefined : (intake + exhaust) / 2;
}
