/**
 * A drawing as data: lines, arcs and labels in millimetres, x to the right and y downward, each with the name of the
 * part that it shows. Pens (SVG on the screen, vectors in a PDF, plain text) draw the same figure.
 * Line roles follow ISO 128: thick visible edges, dashed hidden edges, chain centre lines, thin dimension lines.
 */
export interface Point {
  readonly x: number;
  readonly y: number;
}
export type LineRole = 'visible' | 'hidden' | 'centre' | 'thin' | 'dimension';
export type Fill = 'none' | 'metal' | 'void' | 'gasket' | 'water' | 'oil' | 'mark';
/** What a part's state adds to its drawing; shape and label say it too, never colour alone. */
export type MarkState = 'idle' | 'lit' | 'next' | 'done' | 'missing' | 'wrong' | 'doubt';

interface Drawn {
  readonly role: LineRole;
  readonly fill?: Fill;
  readonly part?: string;
  readonly state?: MarkState;
}
export type Shape =
  | ({ readonly kind: 'line'; readonly from: Point; readonly to: Point } & Drawn)
  | ({ readonly kind: 'polyline'; readonly points: readonly Point[]; readonly closed: boolean } & Drawn)
  | ({ readonly kind: 'circle'; readonly centre: Point; readonly radius: number } & Drawn)
  /** Angles in degrees, from +x toward +y. */
  | ({
      readonly kind: 'arc';
      readonly centre: Point;
      readonly radius: number;
      readonly startDegrees: number;
      readonly endDegrees: number;
    } & Drawn)
  | {
      readonly kind: 'label';
      readonly at: Point;
      readonly text: string;
      readonly size: number;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly part?: string;
      readonly state?: MarkState;
    };

/** A place that a person can touch or reach by keyboard. */
export interface Touch {
  readonly part: string;
  readonly name: string;
  readonly centre: Point;
  readonly reach: number;
}
export interface Figure {
  readonly title: string;
  /** The drawing in words, for those who do not see it. */
  readonly description: string;
  readonly bounds: { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
  readonly shapes: readonly Shape[];
  readonly touches: readonly Touch[];
}
