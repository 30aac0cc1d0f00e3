import { figureToSvg, PRINT } from '@gudgeon/core/drawing';
import {
  type Field,
  fieldOf,
  LAPTOP_PLOT,
  PHONE_PLOT,
  type Plot,
  plotCsv,
  plotFigure,
  plotTable,
  valuesAt,
  valueText,
} from '@gudgeon/core/drawing/plots';
import { memo, type PointerEvent, useId, useMemo, useRef, useState } from 'react';
import { DrawnShape, useInSight, useShownWidth, useWhenSeen } from '../figures/index.js';
import { saveFile } from '../shell/index.js';
import { useReader } from './use-reader.js';

/** Below this width on the screen the narrow form of a plot keeps its letters readable [CSS px]. */
const NARROW = 480;

interface PlotViewProps {
  readonly plot: Plot;
}
/** A plot with the values under the finger or the arrow keys, its values as a table, and both as files. */
export function PlotView({ plot }: PlotViewProps) {
  const sheet = useRef<HTMLElement>(null);
  const shown = useWhenSeen(plot, useInSight(sheet));
  return (
    <figure ref={sheet} className="plot drawing">
      <PlotSheet plot={shown} />
      <PlotFiles plot={plot} />
    </figure>
  );
}

const PlotSheet = memo(function PlotSheet({ plot }: PlotViewProps) {
  const id = useId();
  const size = useShownWidth() < NARROW ? PHONE_PLOT : LAPTOP_PLOT;
  const figure = useMemo(() => plotFigure(plot, size), [plot, size]);
  const field = useMemo(() => fieldOf(plot, size), [plot, size]);
  const reader = useReader(plot);
  // A table of hundreds of rows that nobody looks at would hold up a slider.
  const [told, setTold] = useState(false);
  const svg = useRef<SVGSVGElement>(null);
  const { left, top, width, height } = figure.bounds;
  const read = readingAt(plot, reader.at);

  const follow = (event: PointerEvent) => {
    const matrix = svg.current?.getScreenCTM();
    if (!matrix || (event.type === 'pointermove' && event.buttons === 0)) return;
    const { x } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    reader.goTo(plot.x.from + ((x - field.left) / (field.right - field.left)) * (plot.x.to - plot.x.from));
  };

  return (
    <>
      {/* Touching the sheet reads there; the slider below does the same by keyboard and for those who do not see it. */}
      <div className="drawing-sheet" onPointerDown={follow} onPointerMove={follow}>
        <svg
          ref={svg}
          className="drawing-svg"
          viewBox={`${left} ${top} ${width} ${height}`}
          role="img"
          aria-labelledby={`${id}-title`}
          aria-describedby={`${id}-words`}
        >
          <title id={`${id}-title`}>{figure.title}</title>
          <desc id={`${id}-words`}>{figure.description}</desc>
          <Drawn shapes={figure.shapes} />
          <Cursor field={field} x={reader.at} />
        </svg>
      </div>
      <div
        className="plot-reader"
        role="slider"
        tabIndex={0}
        aria-label={`Read along ${plot.x.name}`}
        aria-valuemin={plot.x.from}
        aria-valuemax={plot.x.to}
        aria-valuenow={reader.at}
        aria-valuetext={`${read.place}: ${read.values.map(({ name, text }) => `${name} ${text}`).join(', ')}`}
        data-arrows
        onKeyDown={reader.onKeyDown}
      >
        <b>{read.place}</b>
        {read.values.map(({ curve, name, text }) => (
          <span key={curve}>
            {name} <b>{text}</b>
          </span>
        ))}
      </div>
      <details className="plot-table" onToggle={(event) => setTold(event.currentTarget.open)}>
        <summary>Values as a table</summary>
        {told && <Table plot={plot} />}
      </details>
    </>
  );
});

function PlotFiles({ plot }: PlotViewProps) {
  return (
    <div className="plot-files">
      <button type="button" className="button" onClick={() => saveFile(plot.title, 'csv', plotCsv(plot))}>
        Save the values (CSV)
      </button>
      <button
        type="button"
        className="button"
        onClick={() => saveFile(plot.title, 'svg', figureToSvg(plotFigure(plot), { theme: PRINT, width: 900 }))}
      >
        Save the drawing (SVG)
      </button>
    </div>
  );
}

function readingAt(plot: Plot, x: number) {
  const values = valuesAt(plot, x).map(({ curve, name, y }) => {
    const axis = plot.curves.find((one) => one.id === curve)?.axis === 'right' && plot.right ? plot.right : plot.left;
    return { curve, name, text: y === undefined ? 'none here' : valueText(axis, y) };
  });
  return { place: valueText(plot.x, x), values };
}

function Drawn({ shapes }: { readonly shapes: ReturnType<typeof plotFigure>['shapes'] }) {
  return useMemo(
    () => (
      <g>
        {shapes.map((shape, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a plot is made anew as a whole
          <DrawnShape key={index} shape={shape} />
        ))}
      </g>
    ),
    [shapes],
  );
}

function Cursor({ field, x }: { readonly field: Field; readonly x: number }) {
  const across = field.x(x);
  return <line className="plot-cursor" x1={across} x2={across} y1={field.top} y2={field.bottom} />;
}

function Table({ plot }: { readonly plot: Plot }) {
  const { columns, rows } = useMemo(() => plotTable(plot), [plot]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard
    <section className="scroll-box" tabIndex={0} aria-label={`Values of ${plot.title}`}>
      <table>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row[0]}>
              {row.map((cell, at) => (
                <td key={columns[at]}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
