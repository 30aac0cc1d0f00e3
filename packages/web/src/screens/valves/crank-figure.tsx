import { camDial, type Figure, frontView, type Marks, stopFigure, valveGearSection } from '@gudgeon/core/drawing';
import type { ValveId } from '@gudgeon/core/engine';
import { type Angle, degrees } from '@gudgeon/core/quantity';
import { useMemo } from 'react';
import { FigureView, useShownWidth } from '../../figures/index.js';
import type { Desk } from './desk.js';

export type CrankFigureName = 'front' | 'damper' | 'dial' | 'gear';

interface CrankFigureProps {
  readonly desk: Desk;
  readonly name: CrankFigureName;
  readonly angle: number;
  /** Valve shown in section. */
  readonly valve?: ValveId;
  /** Cylinders with a valve to set, for the dial. */
  readonly marks?: Marks;
}

/** Crank, cams and valve at an angle, each drawing computed for it. */
export function CrankFigure({ desk, name, angle, valve, marks }: CrankFigureProps) {
  const shownWidth = useShownWidth();
  const { bench, view } = desk;
  const figure = useMemo((): Figure => {
    const at = angle as Angle;
    const shown = { shownWidth };
    if (name === 'damper') return stopFigure(bench.engine, { crankAngle: at }, shown);
    if (name === 'dial') return camDial(bench.engine, at, view.events, degrees(view.marginDegrees ?? 0), marks, shown);
    if (name === 'gear' && valve) return valveGearSection(bench.engine, valve, at, view.events, shown);
    return frontView(bench.engine, at, shown);
  }, [bench.engine, view.events, view.marginDegrees, name, angle, valve, marks, shownWidth]);
  return <FigureView figure={figure} />;
}
