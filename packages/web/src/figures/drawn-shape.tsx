import type { Shape } from '@gudgeon/core/drawing';
import { memo } from 'react';
import { arcPath, pointsText } from './shape-path.js';

interface ShapeProps {
  readonly shape: Shape;
}

/** One line, curve or label of a figure. All looks come from the style sheet, so that screen and paper can differ. */
export const DrawnShape = memo(function DrawnShape({ shape }: ShapeProps) {
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
}, sameShape);

function sameShape(one: ShapeProps, other: ShapeProps): boolean {
  return sameValue(one.shape, other.shape);
}
/** Shapes are plain data: numbers, words, points and lists of them. */
function sameValue(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((each, at) => sameValue(each, other[at]));
  const [names, others] = [Object.keys(one), Object.keys(other)];
  if (names.length !== others.length) return false;
  return names.every((name) => sameValue((one as Plain)[name], (other as Plain)[name]));
}
type Plain = Readonly<Record<string, unknown>>;

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
