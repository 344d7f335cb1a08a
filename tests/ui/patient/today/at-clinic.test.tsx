/** What is done on a machine of the clinic: told on the phone, in both languages, and nothing of it can be begun. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import { AtClinic } from '#ui/patient/at-clinic.tsx';
import { HandoutPage } from '#ui/patient/handout/handout-page.tsx';
import { doableToday } from '#ui/patient/session/doable.ts';
import { Nothing } from '#ui/patient/today/rest.tsx';
import { exercise, today, weightDose } from '../views.ts';

const onPress = {
  ...(weightDose as LowLoadDose),
  exerciseId: 'leg-press-machine',
  loadKg: 30,
  machine: { id: 'press', name: 'Leg press by the window' },
};
const press = exercise('press', onPress);
const view = today({ exercises: [], atClinic: [press] });

describe('an exercise on a machine', () => {
  it('is told with its dose, its machine and its cautions, and that it is for the clinic alone', () => {
    const html = renderToStaticMarkup(<AtClinic view={view} beside={[]} resting="Resting." />);
    expect(html).toContain('At the clinic only');
    expect(html).toContain('Do not try them at home in another way.');
    expect(html).toContain('3 sets of 15 to 20 repetitions');
    expect(html).toContain('at the clinic: Leg press by the window');
    expect(html).toContain('Keep breathing.');
  });

  it('leaves the cautions that an exercise at home has as well to where they stand, and says its own', () => {
    const own = { id: 'machine-set-up', text: { en: 'Only at the clinic.', de: 'Nur dort.' } };
    const both = today({ atClinic: [{ ...press, cautions: [...press.cautions, own] }] });
    const html = renderToStaticMarkup(<AtClinic view={both} beside={both.exercises} resting="Resting." />);
    expect(html).toContain('Only at the clinic.');
    expect(html).not.toContain('Keep breathing.');
  });

  it('is no session of the day, and a plan with nothing else is not called empty', () => {
    expect(doableToday(view)).toEqual([]);
    const html = renderToStaticMarkup(<Nothing view={view} />);
    expect(html).not.toContain('has not set any exercises');
    expect(html).toContain('Nothing is planned for today');
  });

  it('rests without its dose where the plan rests it, and is told easier where that holds', () => {
    const as = (left: 'none' | 'bad-day') =>
      renderToStaticMarkup(
        <AtClinic beside={[]} view={{ ...view, atClinic: [{ ...press, today: left }] }} resting="Resting." />,
      );
    expect(as('none')).toContain('Resting.');
    expect(as('none')).not.toContain('15 to 20 repetitions');
    expect(as('bad-day')).toContain('2 sets of 15 to 20 repetitions');
  });

  it('stands on the page of the whole plan, and leaves no trace where there is none', () => {
    expect(renderToStaticMarkup(<HandoutPage nutrition={null} view={view} />)).toContain(
      'At the clinic only',
    );
    expect(renderToStaticMarkup(<HandoutPage nutrition={null} view={today()} />)).not.toContain(
      'At the clinic only',
    );
  });
});
