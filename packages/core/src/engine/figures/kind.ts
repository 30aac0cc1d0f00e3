/** Figures of the combination of parts: what each is called, how it is measured, and for what it stands. */
import type { QuantityKind } from '../../quantity/kinds.js';

export type FigureGroup = 'cylinder' | 'head-and-gasket' | 'cam' | 'valve-gear' | 'springs' | 'moving-parts' | 'limits';

/** A kind of figure: one for the engine, one for each cylinder, or one for intake and one for exhaust valves. */
export interface FigureKindOf {
  /** `gasket-bore`, `valve-angle`. */
  readonly key: string;
  readonly title: string;
  readonly quantity: QuantityKind;
  readonly per: 'engine' | 'cylinder' | 'valve-kind';
  readonly group: FigureGroup;
  /** What it is and how it is measured, in one sentence. */
  readonly meaning: string;
  /** Which values it can have. */
  readonly sign: 'positive' | 'not-negative' | 'any';
  /** Where it is one of several words and no number: its value is the place in this list, from 0. */
  readonly choices?: readonly string[];
  /** Section of the sheet that holds it already, e.g. `crankTrain.bore`: there it is written, not under `figures`. */
  readonly stands?: string;
}

type Own = Pick<FigureKindOf, 'title' | 'meaning'> & Partial<Pick<FigureKindOf, 'sign' | 'choices' | 'stands'>>;
/** Figures of one group that are alike in quantity and place. */
export const figuresOf = (
  alike: Pick<FigureKindOf, 'group' | 'quantity' | 'per'>,
  rows: Readonly<Record<string, Own>>,
): readonly FigureKindOf[] => Object.entries(rows).map(([key, own]) => ({ key, sign: 'positive', ...alike, ...own }));
