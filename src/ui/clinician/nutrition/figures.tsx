/** Lean mass, protein and energy, each figure beside those it disagrees with; rounded for people. */
import type { NutritionPicture } from '#core/nutrition/picture/nutrition-picture.ts';
import { say } from '#messages/en/staff/episode/nutrition.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { supportInWords } from '../support-note.tsx';

const whole = (value: number): string => String(Math.round(value));
const oneDecimal = (value: number): string => value.toFixed(1);

export const LeanMass = ({ leanMass }: Pick<NutritionPicture, 'leanMass'>) => (
  <section className="stack-close">
    <DataTable
      caption={say('lean')}
      columns={[
        { key: 'formula', title: say('formula') },
        { key: 'kg', title: say('kg'), isNumber: true },
      ]}
      rows={leanMass.byFormula.map(({ formula, leanMassKg }) => ({
        key: formula,
        cells: [say(`formula.${formula}`), oneDecimal(leanMassKg)],
      }))}
      empty={say('lean-none')}
    />
    {leanMass.byFormula.length > 1 && leanMass.lowKg !== null && leanMass.highKg !== null ? (
      <p className="soft small">
        {say('lean-spread', { spread: oneDecimal(leanMass.highKg - leanMass.lowKg) })}
      </p>
    ) : null}
    {leanMass.leftOut.map(({ formula, reason }) => (
      <p key={formula} className="soft small">
        {say(`formula.${formula}`)}: {reason}
      </p>
    ))}
  </section>
);

export const Protein = ({ protein, meal }: Pick<NutritionPicture, 'protein' | 'meal'>) => (
  <section className="stack-close">
    <DataTable
      caption={say('protein')}
      columns={[
        { key: 'basis', title: say('basis') },
        { key: 'from', title: say('from'), isNumber: true },
        { key: 'to', title: say('to'), isNumber: true },
        { key: 'remark', title: say('remark') },
      ]}
      rows={protein.map(({ basis, lowG, highG, notes }) => ({
        key: basis,
        cells: [
          say(`basis.${basis}`),
          whole(lowG),
          whole(highG),
          notes
            .filter(({ code }) => code !== 'not-asked' && code !== 'common-practice')
            .map(({ text }) => text)
            .join(' '),
        ],
      }))}
      empty={say('protein-none')}
    />
    {meal ? <p>{say('at-a-meal', { low: whole(meal.lowG), high: whole(meal.highG) })}</p> : null}
  </section>
);

export const EnergyNeeded = ({ energy }: Pick<NutritionPicture, 'energy'>) =>
  energy === null ? (
    <section className="stack-close">
      <h3>{say('energy')}</h3>
      <p className="soft">{say('energy-none')}</p>
    </section>
  ) : (
    <section className="stack-close">
      <DataTable
        caption={say('energy')}
        columns={[
          { key: 'what', title: say('basis') },
          { key: 'kcal', title: 'kcal', isNumber: true },
        ]}
        rows={[
          { key: 'resting', cells: [say('resting'), whole(energy.restingKcal)] },
          ...energy.byActivity.map(({ activity, kcal }) => ({
            key: activity,
            cells: [say(`activity.${activity}`), whole(kcal)],
          })),
        ]}
      />
      <p>
        {energy.surplusHighKcal === 0
          ? say('surplus-zero')
          : say('surplus', { low: whole(energy.surplusLowKcal), high: whole(energy.surplusHighKcal) })}
      </p>
      {energy.published.map(({ source, lowKcal, highKcal }) => (
        <p key={source} className="soft small">
          {say('surplus-published', {
            source: supportInWords(source),
            low: whole(lowKcal),
            high: whole(highKcal),
          })}
        </p>
      ))}
    </section>
  );
