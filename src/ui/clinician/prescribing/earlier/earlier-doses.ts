/** Earlier doses of an exercise with how often the joint was at its usual the next morning; counts, no forecast. */
import type { Joint } from '#core/exercises/joints.ts';
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import type { DoseAnswers } from '#core/review/dose/corridor.ts';
import { countInWords } from '#core/review/dose/dose-words.ts';
import { dayInWords, jointInWords, listed, shareInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { capital } from '#ui/clinician/capital.ts';
import type { EarlierDoses } from '../../answers.ts';

const doseOf = ({ dose, share }: DoseAnswers): string =>
  dose ? doseInShort(dose) : say('earlier.part', { share: shareInWords(share) });

/** "Left knee at usual the next morning: 3 × 23–25, 4.5 kg 6 of 6, … Since 21 Dec." A line a joint. */
export const earlierInWords = (earlier: EarlierDoses, today: Day): readonly string[] =>
  earlier.map(({ joint, since, doses }) =>
    say('earlier', {
      name: capital(jointInWords(joint as Joint)),
      since: dayInWords(since, today),
      doses: listed(
        doses.map((one) => `${doseOf(one)}: ${countInWords(one)}`),
        doses.length,
      ),
    }),
  );
