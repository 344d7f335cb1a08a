/** What a person sees when something of ours breaks: nothing of what they typed, nothing of the fault. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { LanguageTag } from '#messages/languages.ts';
import { pageWord } from '#messages/page-words.ts';
import { markedNumber, markedText } from '#tests/support/planted.ts';
import { LostPage } from '#ui/patient/lost-page.tsx';
import Broken from '../../src/app/error.tsx';

const lostPage = (tag: LanguageTag): string =>
  renderToStaticMarkup(<LostPage language={tag} word={(key) => pageWord(tag, key)} />);

describe('pages that say something is wrong', () => {
  it('a fault that quotes a record is shown without its words', () => {
    const fault = Object.assign(new Error(`${markedText} hurts ${markedNumber}`), {
      digest: markedText,
      cause: markedText,
    });
    const page = renderToStaticMarkup(<Broken error={fault} reset={() => undefined} />);
    expect(page).toMatch(/<h1/);
    expect(page).not.toContain(markedText);
    expect(page).not.toContain(String(markedNumber));
    expect(page).not.toMatch(/\bat .*\.tsx?|Error:|node_modules/);
  });

  it('an address that leads nowhere is not repeated', () => {
    const page = lostPage('en');
    expect(page).toMatch(/<h1/);
    expect(page).not.toMatch(/\/patients\/|Error:/);
  });

  it('such an address is told in the language chosen on the phone', () => {
    expect(lostPage('de')).toMatch(/lang="de".*Hier ist keine Seite/);
  });
});
