import type { Shape } from '@gudgeon/core/drawing';
import { arcPath, pointsText } from './shape-path.js';

/** One line, curve or label of a figure. All looks come from the style sheet, so that screen and paper can differ. */
export function DrawnShape({ shape }: { readonly shape: Shape }) {
  if (shape.kind === 'label') return <Label shape={shape} />;
  const look = `drawn line-${shape.role} fill-${shape.fill ?? 'none'} state-${shape.state ?? 'idle'}`;
  switch (shape.kind) {
    case 'line':
      return <line className={look} x1={shape.from.x} y1={shape.from.y} x2={shape.to.x} y2={shape.to.y} />;
    case 'polyline':
      return shape.closed ? (
        <polygon className={look} points={pointsText(shape.points)} />
      ) : (
        <polyline className={look} points={pointsText(shape.points)} />
      );
    case 'circle':
      return <circle className={look} cx={shape.centre.x} cy={shape.centre.y} r={shape.radius} />;
    case 'arc':
      return <path className={look} d={arcPath(shape)} />;
  }
}

function Label({ shape }: { readonly shape: Shape & { kind: 'label' } }) {
  return (
    <text
      className={`label state-${shape.state ?? 'idle'}`}
      x={shape.at.x}
      y={shape.at.y}
      fontSize={shape.size}
      textAnchor={shape.anchor}
      dominantBaseline="central"
    >
      {shape.text}
    </text>
  );
}
