/** One screening question on the clinic's page: what is asked further, what was left unsaid, and the note. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { inEnglish } from '#api/clinician/question-in-english.ts';
import { screeningItems } from '#core/screening/items.ts';
import { answersFrom, type ItemState, unanswered } from '#ui/clinician/screening/screening-form-state.ts';
import { ScreeningItemField } from '#ui/clinician/screening/screening-item-field.tsx';

const itemOf = (id: string) => inEnglish(screeningItems.find((item) => item.id === id)!);
const shown = (id: string, over: Partial<ItemState>) =>
  renderToStaticMarkup(
    <ScreeningItemField
      item={itemOf(id)}
      state={{ ...unanswered, ...over }}
      previous={null}
      onChange={() => undefined}
    />,
  );

describe('a screening question', () => {
  it('gives no rule to read: what a yes left unsaid is said, with the most cautious effect, and only then', () => {
    const unsaid = shown('past-clot', { answer: 'yes' });
    expect(unsaid).toContain('Which of them is not said yet. Until it is, the most cautious counts: ');
    expect(unsaid).toContain('no loading until the physician clears it');
    expect(shown('past-clot', { answer: 'yes', details: ['being-treated'] })).not.toContain('not said yet');
    expect(shown('past-clot', { answer: 'no' })).not.toContain('not said yet');
    expect(shown('lymph', { answer: 'yes' })).toContain('Which limb is not said yet.');
    expect(shown('hot-joint', { answer: 'yes' })).toContain('Which joint is not said yet.');
    const all = screeningItems.map(({ id }) => shown(id, { answer: 'yes' })).join(' ');
    expect(all).not.toMatch(/tick none|If you tick/i);
  });

  it('offers "does not apply" beside pregnancy and nowhere else, preselecting nothing', () => {
    const offering = screeningItems
      .map(({ id }) => id)
      .filter((id) => shown(id, {}).includes('Does not apply'));
    expect(offering).toEqual(['pregnancy-or-birth']);
    expect(shown('pregnancy-or-birth', {})).not.toContain('checked=""');
  });

  it('takes a note of at most 200 characters beside any answer, and sends it without spaces around it', () => {
    for (const answer of ['yes', 'no', 'not-known'] as const)
      expect(shown('diabetes', { answer })).toMatch(
        /maxLength="200"[^>]*name="diabetes-note"|name="diabetes-note"[^>]*maxLength="200"/,
      );
    expect(
      answersFrom([itemOf('diabetes')], { diabetes: { ...unanswered, answer: 'no', note: ' since 2019 ' } }),
    ).toEqual([{ item: 'diabetes', answer: 'no', note: 'since 2019' }]);
  });

  it('asks for the day where it decides, and sends it with a yes only', () => {
    expect(shown('past-clot', { answer: 'yes' })).toContain('Day it last happened');
    expect(shown('lymph', { answer: 'yes' })).not.toContain('Day it last happened');
    const state = { ...unanswered, details: ['being-treated'], day: '2026-01-04' };
    const sent = (answer: 'yes' | 'no') =>
      answersFrom([itemOf('past-clot')], { 'past-clot': { ...state, answer } })[0]!.day;
    expect([sent('yes'), sent('no')]).toEqual(['2026-01-04', undefined]);
  });
});
