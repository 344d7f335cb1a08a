/** Every exercise is drawn, for either side, and said. */
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it } from 'vitest';
import { exercises } from '#core/exercises/catalogue.ts';
import { figures } from '#core/figures/exercises/figures.ts';
import { movesOf } from '#core/figures/movements.ts';
import { forms } from '#messages/de/forms.ts';
import { words as german } from '#messages/de/pages/figures.ts';
import { bodies } from '#tests/core/figures/drawn-poses.ts';
import { setLanguage } from '#ui/language/words.ts';
import { ExerciseFigure } from '#ui/patient/figures/exercise-figure.tsx';

const drawn = (exerciseId: string, side?: 'left' | 'right') =>
  renderToStaticMarkup(<ExerciseFigure exerciseId={exerciseId} side={side} />);
const label = (markup: string) => /aria-label="([^"]*)"/.exec(markup)?.[1] ?? '';

afterEach(() => setLanguage());

describe('drawings of exercises', () => {
  it('are there for every exercise of the catalogue, and for nothing else', () => {
    expect(Object.keys(figures).sort()).toEqual(exercises.map(({ id }) => id).sort());
  });

  it('of the left side are the exact mirror of the right, numerals outside', () => {
    for (const { id } of exercises) {
      const [right, left] = [drawn(id, 'right'), drawn(id, 'left')];
      // Taking the mirror out again leaves the drawing of the right side.
      const mirror = / transform="translate\(([-\d.]+) 0\) scale\(-1 1\)"/g;
      const mirrors = [...left.matchAll(mirror)].map(([, shift]) => Number(shift));
      const boxes = [...left.matchAll(/<svg width="[^"]*" height="[^"]*" viewBox="([^"]*)"/g)].map(
        ([, box]) => box!.split(' ').map(Number),
      );
      expect(right).not.toMatch(/NaN|Infinity|undefined/);
      expect(mirrors.length).toBe(boxes.length);
      // What stands at x stands at left + right - x: the box is mapped on itself.
      mirrors.forEach((shift, at) => {
        const [x, , width] = boxes[at]!;
        expect(shift).toBeCloseTo(2 * x! + width!, 6);
      });
      const unsaid = (markup: string) => markup.replace(/ aria-label="[^"]*"/, '');
      expect(unsaid(left.replaceAll(mirror, ''))).toBe(unsaid(right));
    }
  });

  it('say the side that works, and no other, from the poses that are drawn', () => {
    expect(label(drawn('knee-extension-seated', 'left'))).toBe(
      'A drawing, seen from the side. Sitting. The left knee straightens. With a weight at the ankle.',
    );
    expect(label(drawn('knee-extension-seated', 'right'))).toContain('The right knee straightens.');
    expect(label(drawn('side-arm-raise-straight', 'right'))).toContain(
      'The right upper arm goes out to the side.',
    );
    expect(label(drawn('squat-two-legs', 'left'))).toContain('Both knees bend.');
    expect(label(drawn('wall-push-up'))).toContain('Both elbows bend.');
    expect(label(drawn('neck-press-front'))).toContain('Nothing moves.');
  });

  it('say a cuff where one is drawn, and only there', () => {
    const cuffed = (exerciseId: string) =>
      renderToStaticMarkup(<ExerciseFigure exerciseId={exerciseId} side="right" hasCuff />);
    expect(label(cuffed('knee-extension-seated'))).toContain('With a cuff');
    expect(label(cuffed('wrist-bend-up'))).not.toContain('With a cuff');
    expect(label(drawn('knee-extension-seated', 'right'))).not.toContain('With a cuff');
  });

  it('say the same in German', () => {
    setLanguage({ tag: 'de', locale: 'de-DE', forms, words: german });
    expect(label(drawn('knee-extension-seated', 'left'))).toBe(
      'Eine Zeichnung, von der Seite gesehen. Im Sitzen. Das linke Knie wird gestreckt. Mit einem Gewicht am Fußgelenk.',
    );
    expect(label(drawn('wrist-bend-back', 'right'))).toContain('Der rechte Handrücken hebt sich');
  });

  it('name a movement wherever one is drawn', () => {
    const silent = bodies.filter(({ figure }) => figure.end && movesOf(figure).length === 0);
    expect(silent.map(({ id }) => id)).toEqual([]);
  });

  it('leave nothing where no exercise is known', () => {
    expect(drawn('no-such-exercise')).toBe('');
  });
});
