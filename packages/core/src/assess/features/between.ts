/** Sizes between the places of one feature: how far masses, chambers, liners under one head lie apart. */
export interface Between {
  readonly property: string;
  readonly title: string;
  /** One feature, or several whose sizes at a place are added: both ends of a rod. */
  readonly features: readonly string[];
  /** Which of it is held against the limit. */
  readonly form: 'spread' | 'largest' | 'steps';
  readonly per: 'engine' | 'bank';
}
const row = (
  feature: string | readonly string[],
  property: string,
  title: string,
  form: Between['form'] = 'spread',
  per: Between['per'] = 'engine',
): Between =>
  typeof feature === 'string'
    ? { features: [feature], property: `${feature}.${property}`, title, form, per }
    : { features: feature, property, title, form, per };

export const BETWEEN: readonly Between[] = [
  row('liner-protrusion', 'between', 'liner protrusion, spread under one head', 'spread', 'bank'),
  row('liner-protrusion', 'neighbours', 'liner protrusion, largest step between neighbours', 'steps', 'bank'),
  row('piston-protrusion', 'between', 'piston protrusion, spread over the cylinders'),
  row('piston-protrusion', 'largest', 'largest piston protrusion', 'largest'),
  row('deck-clearance', 'between', 'deck clearance, spread over the cylinders'),
  row('chamber-volume', 'between', 'chamber volume, spread over the cylinders'),
  row('piston-mass', 'between', 'piston mass, spread over the cylinders'),
  row('pin-mass', 'between', 'pin mass, spread over the cylinders'),
  row(['rod-big-end-mass', 'rod-small-end-mass'], 'rod-mass.between', 'rod mass, spread over the cylinders'),
  row('rod-big-end-mass', 'between', 'big-end mass, spread over the cylinders'),
  row('rod-small-end-mass', 'between', 'small-end mass, spread over the cylinders'),
];
