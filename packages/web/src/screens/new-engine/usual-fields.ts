/** The fields that differ most often from one engine to the next; all others are in the text. */
export interface UsualField {
  readonly path: readonly string[];
  readonly label: string;
  readonly hint: string;
  /** True for a figure, which carries its origin. */
  readonly figure: boolean;
  /** Shown only where the sheet has this section, so that the form asks nothing that cannot apply. */
  readonly within?: string;
}
export const usualFields: readonly UsualField[] = [
  { path: ['name'], label: 'Name of this engine', hint: 'As you call it on the stand.', figure: false },
  { path: ['description'], label: 'Description', hint: 'What a stranger should know.', figure: false },
  { path: ['layout', 'firingOrder'], label: 'Firing order', hint: 'e.g. 1-3-4-2', figure: false },
  { path: ['crankTrain', 'bore'], label: 'Bore', hint: 'With unit, e.g. 4.030 in', figure: true },
  { path: ['crankTrain', 'stroke'], label: 'Stroke', hint: 'With unit, e.g. 88.4 mm', figure: true },
  { path: ['crankTrain', 'rodLength'], label: 'Rod length', hint: 'Centre to centre', figure: true },
  { path: ['crankTrain', 'compressionRatio'], label: 'Compression ratio', hint: 'e.g. 9.1:1', figure: true },
  { path: ['valveGear', 'ratio'], label: 'Rocker ratio', hint: 'e.g. 1.6:1', figure: true, within: 'valveGear' },
  {
    path: ['valveGear', 'adjuster', 'pitch'],
    label: 'Adjuster thread pitch',
    hint: 'e.g. 1.25 mm',
    figure: true,
    within: 'valveGear',
  },
  {
    path: ['valveGear', 'preload', 'turns'],
    label: 'Lifter preload',
    hint: 'Turns past zero lash, e.g. 3/4 turn',
    figure: true,
    within: 'valveGear.preload',
  },
];
