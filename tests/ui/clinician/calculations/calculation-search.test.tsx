/** Calculations and rules found by what somebody types: the trade's name, plain words, German. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { registry } from '#core/calculations/registry.ts';
import { rulesOf } from '#core/decision/rules/table.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import { hasWords } from '#core/word-search.ts';
import { plainCalculationNames } from '#messages/search/plain-calculation-names.ts';
import { sameMeaning } from '#messages/search/same-meaning.ts';
import { calculationSections } from '#ui/clinician/calculations/calculations-screen.tsx';
import { ruleSections } from '#ui/clinician/rules/rules-screen.tsx';
import { SearchedList, type SearchedSection } from '#ui/clinician/search/searched-list.tsx';

const found = (sections: readonly SearchedSection[], words: string): readonly string[] =>
  sections.flatMap(({ heading, items }) =>
    items
      .filter(({ text }) => hasWords(`${text} ${heading ?? ''}`, words, sameMeaning))
      .map(({ key }) => key),
  );
const calculations = calculationSections(registry);

describe('the search over the calculations', () => {
  it('has a plain name for every calculation of the registry, and for nothing else', () => {
    expect(Object.keys(plainCalculationNames).sort()).toEqual(registry.map(({ id }) => id).sort());
  });

  it.each([
    ['timed up and go', 'timed-up-and-go'],
    ['standing up walking', 'timed-up-and-go'],
    ['1RM', 'one-rep-max'],
    ['heaviest weight', 'one-rep-max'],
    ['blood clot leg', 'wells-dvt'],
    ['DVT', 'wells-dvt'],
    ['BMI', 'body-mass-index'],
    ['Blutdruck', 'exercise-start-gate'],
    ['Manschette Druck', 'occlusion-target'],
    ['Eiweiß', 'protein-target'],
    ['Niere', 'egfr'],
    ['Messfehler', 'minimal-detectable-change'],
    ['Rheuma', 'das28'],
    ['das28', 'das28'],
  ])('finds by “%s” %s', (words, id) => {
    expect(found(calculations, words)).toContain(id);
  });

  it('says that nothing is found, with what to do', () => {
    const html = renderToStaticMarkup(
      <SearchedList action="/x" label="L" hint="H" start="Bagger" sections={calculations} className="c" />,
    );
    expect(html).toContain('Nothing is found for “Bagger”. Try fewer or other words.');
    expect(html).not.toContain('one-rep-max');
  });
});

describe('the search over the rules', () => {
  const rules = ruleSections(
    rulesOf(2).map((rule) => ({
      ...rule,
      threshold: rule.threshold(engineDefaults),
      settings: [],
      patientReads: [],
      overruled: 0,
    })),
  );

  it.each([
    ['P5', 'P5'],
    ['next morning usual', 'P5'],
    ['Morgen gewohnt', 'P5'],
    ['swelling', 'W2'],
    ['Schwellung', 'W2'],
  ])('finds by “%s” %s', (words, id) => {
    expect(found(rules, words)).toContain(id);
  });
});
