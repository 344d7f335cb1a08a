/** Growth curves as an SVG: patients of the clinic across, milliseconds of one reading up, both by powers of ten. */
export interface Curve {
  readonly title: string;
  readonly milliseconds: readonly number[];
}

const width = 700;
const height = 400;
const margin = { left: 64, right: 230, top: 40, bottom: 48 };
const inks = ['#1f4e79', '#a14a00', '#3d6b35', '#6b3d6b'];
const dashes = ['', '6 3', '2 3', '8 3 2 3'];

const powersWithin = (low: number, high: number): readonly number[] => {
  const powers: number[] = [];
  for (let power = Math.floor(Math.log10(low)); power <= Math.ceil(Math.log10(high)); power++)
    powers.push(10 ** power);
  return powers;
};

const scale = (powers: readonly number[], from: number, to: number) => {
  const [low, high] = [Math.log10(powers[0]!), Math.log10(powers.at(-1)!)];
  const span = high === low ? 1 : high - low;
  return (value: number) => from + ((Math.log10(value) - low) / span) * (to - from);
};

const at = (value: number): string => value.toFixed(1);

const curveMarks = (
  curve: Curve,
  place: number,
  sizes: readonly number[],
  x: (value: number) => number,
  y: (value: number) => number,
  labelY: number,
): string => {
  const ink = inks[place % inks.length]!;
  const points = curve.milliseconds.map((value, index) => [x(sizes[index]!), y(value)] as const);
  const line = points.map(([px, py]) => `${at(px)},${at(py)}`).join(' ');
  const dots = points
    .map(([px, py]) => `<circle cx="${at(px)}" cy="${at(py)}" r="4" fill="${ink}"/>`)
    .join('');
  const [lastX] = points.at(-1)!;
  const said = `${curve.title}, ${curve.milliseconds.at(-1)!.toPrecision(2)} ms`;
  return [
    `<polyline points="${line}" fill="none" stroke="${ink}" stroke-width="2" stroke-dasharray="${dashes[place % dashes.length]}"/>`,
    dots,
    `<text x="${at(lastX + 10)}" y="${at(labelY + 4)}" fill="${ink}">${said}</text>`,
  ].join('\n');
};

const leastApart = 16;

/** Where each curve's name stands: at its end, moved down where two would lie on each other. */
const labelHeights = (curves: readonly Curve[], y: (value: number) => number): readonly number[] => {
  const ends = curves.map((curve, place) => ({ place, height: y(curve.milliseconds.at(-1)!) }));
  const heights: number[] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (const { place, height } of ends.sort((a, b) => a.height - b.height)) {
    last = Math.max(height, last + leastApart);
    heights[place] = last;
  }
  return heights;
};

export const growthPicture = (sizes: readonly number[], curves: readonly Curve[]): string => {
  const all = curves.flatMap((curve) => curve.milliseconds);
  const [across, up] = [
    powersWithin(sizes[0]!, sizes.at(-1)!),
    powersWithin(Math.min(...all), Math.max(...all)),
  ];
  const x = scale(across, margin.left, width - margin.right);
  const y = scale(up, height - margin.bottom, margin.top);
  const bottom = height - margin.bottom;
  const heights = labelHeights(curves, y);
  const columns = across.map(
    (value) =>
      `<line x1="${at(x(value))}" y1="${margin.top}" x2="${at(x(value))}" y2="${bottom}" stroke="#ccc"/>` +
      `<text x="${at(x(value))}" y="${bottom + 18}" text-anchor="middle">${value}</text>`,
  );
  const rows = up.map(
    (value) =>
      `<line x1="${margin.left}" y1="${at(y(value))}" x2="${width - margin.right}" y2="${at(y(value))}" stroke="#ccc"/>` +
      `<text x="${margin.left - 8}" y="${at(y(value) + 4)}" text-anchor="end">${value}</text>`,
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="12">`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    `<text x="${margin.left}" y="20">Milliseconds of one reading by patients of the clinic</text>`,
    ...columns,
    ...rows,
    ...curves.map((curve, place) => curveMarks(curve, place, sizes, x, y, heights[place]!)),
    `<text x="${margin.left}" y="${height - 8}">patients of the clinic</text>`,
    '</svg>',
    '',
  ].join('\n');
};
