/** The plan on the phone: what bounds the dose and whom to ring stand open, the lists are a press away and all there. */
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { redFlags } from '#core/decision/facts/facts.ts';
import { t } from '#ui/language/words.ts';
import { HandoutPage } from '#ui/patient/handout/handout-page.tsx';
import { exercise, today, weightDose } from './views.ts';

const cautions = [
  { id: 'a', text: { en: 'A common caution.', de: 'Ein Hinweis.' } },
  { id: 'b', text: { en: 'A limit of this dose.', de: 'Eine Grenze.' }, isLimit: true },
];
const view = today({
  exercises: [exercise('one', weightDose, { cautions })],
  painLookups: [{ joint: 'knee-right', acceptablePainLimit: 4 }] as never,
});
const html = renderToStaticMarkup(<HandoutPage nutrition={null} view={view} />);
const open = html.replace(/<details.*?<\/details>/gs, '');

it('the limits, the dose, and the numbers to ring stand outside what is folded', () => {
  expect(open).toContain('A limit of this dose.');
  expect(open).toContain('up to 4 of 10');
  expect(open).toContain(`tel:${view.clinic.phone.replace(/\s/g, '')}`);
  expect(open).toContain(`tel:${view.clinic.emergencyNumber}`);
});

it('while only the easier session is done it stands large, and the whole one is named as what comes after', () => {
  const eased = today({ exercises: [exercise('one', weightDose, { today: 'bad-day' })] });
  const text = renderToStaticMarkup(<HandoutPage nutrition={null} view={eased} />);
  expect(text).toMatch(
    /For now do the easier session\..*<p class="dose figure">2 sets of 15 to 20 repetitions</s,
  );
  expect(text).toContain('The whole session, once that is over: 3 sets of 15 to 20 repetitions, with 4 kg.');
  expect(html).toMatch(/<p class="dose figure">3 sets of 15 to 20 repetitions</);
});

it('each caution stands once, and each warning sign that goes without a cuff', () => {
  for (const { text } of cautions) expect(html.split(text.en)).toHaveLength(2);
  const signs = redFlags.filter((flag) => flag !== 'persistent-limb-change-after-release');
  for (const flag of signs) expect([flag, html.includes(t(`flag.${flag}`))]).toEqual([flag, true]);
});
