import type { Figure, Shape, Touch } from '@gudgeon/core/drawing';
import {
  type KeyboardEvent,
  type MouseEvent,
  memo,
  type SyntheticEvent,
  useId,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import { DrawnShape } from './drawn-shape.js';
import { neighbour, touchAt } from './neighbour.js';

interface FigureViewProps {
  readonly figure: Figure;
  /** Called with the part's name when its place is touched; without it the figure is a picture only. */
  readonly onTouch?: (part: string) => void;
  /** The place that the screen is about now. */
  readonly current?: string;
  readonly caption?: string;
  /** On a phone shows it through a window of about a third of the screen's height, which follows the current place
   * and is closed while there is none. */
  readonly low?: boolean;
  /** Leaves out the long names of all parts but the current one, where so many would cover each other. */
  readonly fewNames?: boolean;
}
/** Half a finger on the glass [CSS px]: 44 px across. */
const fingerHalf = 22;

/** Draws a figure of the core as SVG. Its places are buttons: one tab stop, arrow keys between them. */
export function FigureView({ figure, onTouch, current, caption, low = false, fewNames = false }: FigureViewProps) {
  const id = useId();
  const svg = useRef<SVGSVGElement>(null);
  const sheet = useRef<HTMLDivElement>(null);
  const { left, top, width, height } = figure.bounds;
  const shown = fewNames
    ? figure.shapes.filter((shape) => !hasLongName(shape, figure.touches) || partOf(shape) === current)
    : figure.shapes;
  const live = onTouch !== undefined && figure.touches.length > 0;

  useLayoutEffect(() => {
    const place = figure.touches.find((touch) => touch.part === current);
    const box = sheet.current;
    if (!low || !place || !box) return;
    box.scrollTop = ((place.centre.y - top) / height) * box.scrollHeight - box.clientHeight / 2;
  }, [low, current, figure, top, height]);

  const onClick = (event: MouseEvent) => {
    const matrix = svg.current?.getScreenCTM();
    if (!matrix || !onTouch || event.detail === 0) return;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const touch = touchAt(figure.touches, at, fingerHalf / matrix.a);
    if (touch) onTouch(touch.part);
  };

  return (
    <figure className={`drawing${low ? ' drawing-low' : ''}${low && current === undefined ? ' drawing-idle' : ''}`}>
      <div ref={sheet} className="drawing-sheet">
        {/* The click reaches the places by their keys as well; on the sheet itself it only finds the nearest one. */}
        {/* biome-ignore lint/a11y/useKeyWithClickEvents: see above */}
        <svg
          ref={svg}
          className="drawing-svg"
          viewBox={`${left} ${top} ${width} ${height}`}
          role={live ? 'group' : 'img'}
          aria-labelledby={`${id}-title`}
          aria-describedby={`${id}-words`}
          onClick={live ? onClick : undefined}
        >
          <title id={`${id}-title`}>{figure.title}</title>
          <desc id={`${id}-words`}>{figure.description}</desc>
          {/* The words for those who do not see the drawing are its title and description. */}
          {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of lines takes no focus */}
          <g aria-hidden="true">
            {namedShapes(shown).map(([name, shape]) => (
              <DrawnShape key={name} shape={shape} />
            ))}
          </g>
          {live && <Places touches={figure.touches} current={current} onTouch={onTouch} />}
        </svg>
      </div>
      {caption && <figcaption>{caption}</figcaption>}
    </figure>
  );
}

/** A figure is made anew as a whole. Its shapes are told apart by part and kind, so that only what looks different is drawn again. */
function namedShapes(shapes: readonly Shape[]): readonly (readonly [string, Shape])[] {
  const counts = new Map<string, number>();
  return shapes.map((shape) => {
    const like = `${shape.part ?? ''} ${shape.kind}`;
    const count = counts.get(like) ?? 0;
    counts.set(like, count + 1);
    return [`${like} ${count}`, shape];
  });
}

const partOf = (shape: Shape): string | undefined => shape.part;
/** The name of a place that can be touched. Hole numbers are short and stay, because a person counts by them. */
const hasLongName = (shape: Shape, touches: readonly Touch[]): boolean =>
  shape.kind === 'label' && shape.text.length > 3 && touches.some((touch) => touch.part === shape.part);

interface PlacesProps {
  readonly touches: readonly Touch[];
  readonly current: string | undefined;
  readonly onTouch: (part: string) => void;
}

function Places({ touches, current, onTouch }: PlacesProps) {
  const [roving, setRoving] = useState<string>();
  const all = useRef<SVGGElement>(null);
  const stop = touches.find((t) => t.part === roving) ?? touches.find((t) => t.part === current) ?? touches[0];
  const touched = ({ target }: SyntheticEvent): Touch | undefined => {
    const part = (target as Element).closest<SVGGElement>('[data-part]')?.dataset.part;
    return touches.find((touch) => touch.part === part);
  };
  const onKey = (event: KeyboardEvent) => {
    const touch = touched(event);
    if (!touch) return;
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      event.stopPropagation();
      if (!event.repeat) onTouch(touch.part);
      return;
    }
    const next = neighbour(touches, touch, event.key);
    if (!event.key.startsWith('Arrow')) return;
    event.preventDefault();
    event.stopPropagation();
    if (!next) return;
    setRoving(next.part);
    all.current?.querySelector<SVGGElement>(`[data-part="${CSS.escape(next.part)}"]`)?.focus();
  };
  return (
    // Events of the places come up to their group, so that a place is drawn anew only where it looks different.
    // biome-ignore lint/a11y/noStaticElementInteractions: see above
    <g
      ref={all}
      data-arrows
      onFocus={(event) => setRoving(touched(event)?.part)}
      onKeyDown={onKey}
      onClick={(event) => {
        // Assistive technology presses without a place on the glass.
        const touch = event.detail === 0 ? touched(event) : undefined;
        if (touch) onTouch(touch.part);
      }}
    >
      {touches.map(({ part, name, centre, reach }) => (
        <Place
          key={part}
          part={part}
          name={name}
          x={centre.x}
          y={centre.y}
          reach={reach}
          stop={part === stop?.part}
          current={part === current}
        />
      ))}
    </g>
  );
}

interface PlaceProps {
  readonly part: string;
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly reach: number;
  readonly stop: boolean;
  readonly current: boolean;
}
const Place = memo(function Place({ part, name, x, y, reach, stop, current }: PlaceProps) {
  return (
    // A button element cannot stand inside SVG.
    // biome-ignore lint/a11y/useSemanticElements: see above
    <g
      className="place"
      role="button"
      tabIndex={stop ? 0 : -1}
      aria-label={name}
      aria-current={current ? 'true' : undefined}
      data-part={part}
    >
      <circle className="place-ring" cx={x} cy={y} r={reach} />
    </g>
  );
});
