/** Seats and valve heads (M40, M41). */
import { DIAL, eachValve, PROTRACTOR, RULE } from './each-valve.js';
import { always, type FeatureRule, HUNDREDTH, whenAsked } from './rule.js';

export const seats: readonly FeatureRule[] = [
  eachValve(
    {
      ...RULE,
      id: 'seat-width',
      title: 'Widths of the seats',
      one: 'seat width',
      condition: 'seat ground, its mark shown with blue',
      how: 'Width of the blue band where the valve seals.',
      figure: 'valve-seat',
      size: 'width',
    },
    always,
  ),
  eachValve(
    {
      ...DIAL,
      id: 'seat-runout',
      title: 'Run-out of the seats',
      one: 'seat run-out',
      condition: 'pilot tight in its own guide',
      how: 'Whole swing of the dial round the seat.',
      size: 'total',
    },
    always,
  ),
  eachValve(
    {
      ...PROTRACTOR,
      id: 'seat-angle',
      title: 'Angles of the seats',
      one: 'seat angle',
      condition: 'seat ground',
      how: 'From the plane across the seat to its face.',
      size: 'angle',
    },
    whenAsked,
  ),
  eachValve(
    {
      ...PROTRACTOR,
      id: 'face-angle',
      title: 'Angles of the valve faces',
      one: 'face angle',
      condition: 'face ground',
      how: 'From the plane across the valve head to its face.',
      size: 'angle',
    },
    whenAsked,
  ),
  eachValve(
    {
      ...DIAL,
      id: 'face-runout',
      title: 'Run-out of the valve faces',
      one: 'face run-out',
      condition: 'stem turning in vee blocks',
      how: 'Whole swing of the dial on the face.',
      size: 'total',
    },
    whenAsked,
  ),
  eachValve(
    {
      ...RULE,
      id: 'valve-margin',
      title: 'Margins of the valves',
      one: 'margin',
      condition: 'face ground',
      how: 'Edge left between the face and the flat of the head, at its thinnest.',
      figure: 'valve-seat',
      sense: 'shaft',
      size: 'thickness',
    },
    always,
  ),
  eachValve(
    {
      ...RULE,
      id: 'valve-head-diameter',
      title: 'Diameters of the valve heads',
      one: 'valve head',
      condition: 'valve out and clean',
      how: 'Across the head.',
      figure: 'valve-seat',
      size: 'diameter',
    },
    whenAsked,
  ),
  eachValve(
    {
      ...RULE,
      id: 'valve-length',
      title: 'Lengths of the valves',
      one: 'valve length',
      condition: 'valve out and clean',
      how: 'From the tip to the flat of the head.',
      figure: 'length',
      size: 'length',
    },
    whenAsked,
  ),
  eachValve(
    {
      ...DIAL,
      id: 'valve-recess',
      title: 'Valve recesses',
      one: 'valve recess',
      resolution: HUNDREDTH,
      condition: 'valve on its seat, head face clean',
      how: 'Zero the dial on the head face, then read the middle of the valve head. Below the face is positive.',
      figure: 'protrusion',
      sense: 'hole',
      material: 'head',
      size: 'depth',
    },
    whenAsked,
  ),
];
