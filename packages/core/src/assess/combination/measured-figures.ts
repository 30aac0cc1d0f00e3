/** Figures that were measured: sizes of an assessment with their uncertainty. */
import { figureKey } from '../../engine/index.js';
import type { Assessment, Place, Size } from '../model.js';
import type { GivenFigure } from './model.js';
import { CYLINDER_SIZES, cylindersOfPlace, type SizeAsFigure, VALVE_SIZES, valvePlace } from './sizes-as-figures.js';

/** Every size of the assessment that is a figure of the combination. */
export const measuredFigures = (assessment: Assessment): readonly GivenFigure[] => [
  ...CYLINDER_SIZES.flatMap((size) =>
    found(assessment, size, (place) => cylindersOfPlace(assessment.engine, place).map(String)),
  ),
  ...VALVE_SIZES.flatMap((size) => found(assessment, size, (place) => valvePlace(place) ?? [])),
];

function found(
  { plan, sizes }: Assessment,
  { property, figure, sign }: SizeAsFigure,
  placesOf: (place: Place) => string | readonly string[],
): readonly GivenFigure[] {
  const feature = plan.features.find(({ kind }) => kind.id === property.split('.')[0]);
  return (feature?.places ?? []).flatMap((place) => {
    const size = sizes.get(`${property}@${place.id}`);
    if (size === undefined) return [];
    return [placesOf(place)].flat().map((at) => given(figureKey(figure, at), size, sign ?? 1, place));
  });
}

const given = (key: string, { value, u, title }: Size, sign: 1 | -1, place: Place): GivenFigure => ({
  key,
  value: sign * value,
  ...(u !== undefined && { u }),
  origin: 'measured',
  from: `${title}, ${place.name}`,
});
