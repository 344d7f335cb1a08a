/** Cautions of a dose: the clinician's words, and beneath them what the patient reads. None can be removed. */
import type { ShownCaution } from '#api/clinician/caution-words.ts';
import { say } from '#messages/en/staff/prescribing.ts';
import { supportInWords } from '../support-note.tsx';

export const CautionList = ({ cautions }: { readonly cautions: readonly ShownCaution[] }) => (
  <ul className="cautions">
    {cautions.map((caution) => (
      <li key={caution.id}>
        {caution.text}{' '}
        <span className="soft">
          {say('to-patient', { text: caution.toPatient, support: supportInWords(caution.support) })}
        </span>
      </li>
    ))}
  </ul>
);
