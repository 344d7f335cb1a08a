/** Where the names of a staircase's steps have room: beside the staircase, and never on one another. */
interface NamedStep {
  /** Of the first signed dose; null = not to be compared with it, and so without height and name. */
  readonly share: number | null;
  readonly inShort: string;
  /** Named before the others, and in bold. */
  readonly isSigned?: boolean;
}

export interface Place<S extends NamedStep> {
  readonly steps: readonly S[];
  /** Where a step begins. */
  readonly x: (step: S) => number;
  readonly y: (share: number) => number;
  /** From the axis to the end of the plot. */
  readonly from: number;
  readonly to: number;
  readonly perLetter: number;
}

export interface StepName {
  readonly key: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'end';
  readonly isSigned: boolean;
}

/** Bold letters are wider. */
const lengthOf = ({ text, isSigned }: Pick<StepName, 'text' | 'isSigned'>, perLetter: number): number =>
  text.length * perLetter * (isSigned ? 1.1 : 1);

/** A step among the last ones that reaches as high would be drawn through a name left of its riser. */
const isCrossed = <S extends NamedStep>({ steps, x }: Place<S>, place: number, from: number): boolean =>
  steps.slice(0, place).some((step, before) => {
    const reach = Math.max(step.share ?? 0, steps[before - 1]?.share ?? 0);
    return x(step) > from && reach >= (steps[place]?.share ?? 0);
  });

/** A later step leaves the line, up or down, before a name above or below it would end. */
const isLeftBefore = <S extends NamedStep>(
  { steps, x }: Place<S>,
  place: number,
  end: number,
  way: 1 | -1,
): boolean => {
  const own = steps[place]!.share ?? 0;
  return steps.slice(place + 1).some((step) => x(step) < end && ((step.share ?? own) - own) * way > 0);
};

/** A step up is named left of its riser, one down below its line; the last ends with the line. */
const placesFor = <S extends NamedStep>(at: Place<S>, place: number): readonly StepName[] => {
  const step = at.steps[place]!;
  const { share, inShort: text, isSigned = false } = step;
  if (share === null) return [];
  const begin = at.x(step);
  const before = at.steps[place - 1]?.share ?? null;
  const named = { key: `${begin} ${text}`, text, isSigned };
  const length = lengthOf(named, at.perLetter);
  const [above, below] = [at.y(share) - 6, at.y(share) + 13];
  const end = begin + 3 + length;
  const along = (y: number): StepName =>
    end > at.to ? { ...named, x: at.to, y, anchor: 'end' } : { ...named, x: begin + 3, y, anchor: 'start' };
  const alongAbove = isLeftBefore(at, place, end, 1) ? [] : [along(above)];
  const alongBelow = isLeftBefore(at, place, end, -1) ? [] : [along(below)];
  if (before !== null && share < before) return [...alongBelow, ...alongAbove];
  const start = begin - 4 - length;
  const isUp = before !== null && share > before;
  // Clear of the line it rises from, however small the step.
  const y = isUp ? Math.min(at.y(share) + 4, at.y(before) - 7) : above;
  const leftOfRiser: StepName = { ...named, x: begin - 4, y, anchor: 'end' };
  const hasRoomLeft = isUp && start > at.from && !isCrossed(at, place, start);
  return [...(hasRoomLeft ? [leftOfRiser] : []), ...alongAbove, ...alongBelow];
};

const boxOf = (name: StepName, perLetter: number) => {
  const { x, y, anchor } = name;
  const length = lengthOf(name, perLetter);
  return { from: anchor === 'end' ? x - length : x, to: anchor === 'end' ? x : x + length, y };
};

/** A name that would stand on another is left out; the review says every step in words. */
export const stepNames = <S extends NamedStep>(at: Place<S>): readonly StepName[] => {
  const names: StepName[] = [];
  const isFree = (name: StepName) =>
    names.every((other) => {
      const [box, own] = [boxOf(other, at.perLetter), boxOf(name, at.perLetter)];
      return own.to + 6 < box.from || own.from > box.to + 6 || Math.abs(own.y - box.y) > 12;
    });
  // Signed ones first, each from the newest back: what stands now is named first.
  const places = at.steps.map((_step, place) => place).reverse();
  for (const isSigned of [true, false])
    for (const place of places) {
      if ((at.steps[place]!.isSigned ?? false) !== isSigned) continue;
      const name = placesFor(at, place).find(isFree);
      if (name) names.push(name);
    }
  return names;
};
