import type { Area, Length, Volume } from '../../quantity/index.js';

/**
 * Area of a circle [m²]: A = π/4·D², D `diameter` [m].
 *
 * Example: 4 in gives 12.566 in². Source: definition.
 */
export const discArea = (diameter: Length): Area => ((Math.PI / 4) * diameter ** 2) as Area;

/**
 * Volume of a disc [m³]: V = π/4·D²·h. With the stroke as height it is the swept volume of a cylinder, with the gasket's
 * bore and compressed thickness the gasket's; `height` [m] carries its sign, so that a piston proud of the deck makes
 * its deck volume negative.
 *
 * Example: bore 4.000 in, stroke 3.480 in gives 43.731 in³. Source: definition; worked numbers in `cylinder-ratio-parts`.
 */
export const discVolume = (diameter: Length, height: Length): Volume => (discArea(diameter) * height) as Volume;

/**
 * Volume of the ring-shaped crevice above the top ring [m³]: V = π/4·(B² − d²)·h.
 *
 * B `bore`, d `landDiameter` of the top land (at most the bore), h `landHeight` from crown to top ring, all [m].
 * Example: bore 100 mm, land 99.4 mm, 6 mm high: 0.564 cm³. Source: definition.
 */
export const creviceVolume = (bore: Length, landDiameter: Length, landHeight: Length): Volume =>
  ((discArea(bore) - discArea(landDiameter)) * landHeight) as Volume;

/**
 * Volume between two parallel discs with straight sloping walls [m³], such as a dish with a tapered wall:
 * V = π/12·h·(D² + D·d + d²), D and d the diameters at the two ends, h the depth, all [m].
 *
 * With d = D it is a plain dish, with d = 0 a cone. Source: any handbook, frustum of a cone (from memory).
 * Example: 80 mm at the top, 60 mm at the floor, 4 mm deep: 15.499 cm³.
 */
export const frustumVolume = (top: Length, floor: Length, depth: Length): Volume =>
  ((Math.PI / 12) * depth * (top ** 2 + top * floor + floor ** 2)) as Volume;

/**
 * Volume of a spherical cap [m³], such as a round dish or dome: V = π/24·h·(3·D² + 4·h²).
 *
 * D `diameter` at the rim, h `depth` at the middle, both [m]. Source: any handbook, spherical segment (from memory).
 * Example: 80 mm rim, 4 mm deep: 10.087 cm³.
 */
export const capVolume = (diameter: Length, depth: Length): Volume =>
  ((Math.PI / 24) * depth * (3 * diameter ** 2 + 4 * depth ** 2)) as Volume;
