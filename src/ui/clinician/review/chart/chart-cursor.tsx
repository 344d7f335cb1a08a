'use client';
/**
 * The day in hand, as a line. It reads its day past the chart: a chart of three years is drawn once, and
 * not anew at each day the pointer passes.
 */
import { createContext, useContext } from 'react';
import type { Drawn } from './chart-axes.tsx';
import { dayDomain } from './chart-scale.ts';

export const CursorDay = createContext<number | null>(null);

export const ChartCursor = ({ chart, scale, area }: Drawn) => {
  const day = useContext(CursorDay);
  const [first, last] = dayDomain(chart);
  if (day === null || day < first || day > last) return null;
  return (
    <line className="chart-cursor" x1={scale.xOf(day)} x2={scale.xOf(day)} y1={area.y} y2={scale.foot} />
  );
};
