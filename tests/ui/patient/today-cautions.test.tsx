/** What bounds today's dose is never behind a press. */
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { KeepInMind, LimitLines } from '#ui/patient/keep-in-mind.tsx';
import { exercise, weightDose } from './views.ts';

const caution = (id: string, isLimit?: boolean) => ({
  id,
  text: { en: `Caution ${id}`, de: `Hinweis ${id}` },
  ...(isLimit ? { isLimit } : {}),
});

const folded = (html: string): string => /<details.*<\/details>/s.exec(html)?.[0] ?? '';

it.each([true, false])(
  'a limit stands open beside what is folded, each caution once (new dose: %s)',
  (isNewDose) => {
    const cautions = [caution('common'), caution('limit', true)];
    const one = exercise('a', weightDose, { cautions, isNewDose });
    const two = exercise('b', weightDose, { cautions, isNewDose });
    const html = renderToStaticMarkup(
      <>
        <LimitLines exercises={[one, two]} />
        <KeepInMind exercises={[one, two]} isOpen={isNewDose} />
      </>,
    );
    expect(html.split('Caution limit')).toHaveLength(2);
    expect(html.split('Caution common')).toHaveLength(2);
    expect(folded(html)).toContain('Caution common');
    expect(folded(html)).not.toContain('Caution limit');
    expect(/<details[^>]* open/.test(html)).toBe(isNewDose);
  },
);
