/** Cautions of a dose: the clinician's words, and beneath them what the patient reads. None can be removed. */
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import { supportInWords } from '../support-note.tsx';

export const CautionList = ({ cautions }: { readonly cautions: readonly Caution[] }) => (
  <ul className="cautions">
    {cautions.map((caution) => (
      <li key={caution.id}>
        {caution.text}{' '}
        <span className="soft">
          To the patient: “{caution.patientText}” ({supportInWords(caution.support)})
        </span>
      </li>
    ))}
  </ul>
);
