/** What is asked of the limb after a cuff; apart from the draft, which today's page reads on every day. */
import { type LimbSign, signsAsked } from '#core/prescribing/occlusion/limb-check.ts';
import type { ItemDraft } from './draft.ts';

/** The signs a line asks about; a pulse the patient was not shown is not asked about again. */
export const signsOf = ({ dose, signs }: ItemDraft, isLater: boolean): readonly LimbSign[] =>
  dose.method === 'occlusion'
    ? signsAsked(dose).filter((sign) => !(isLater && signs?.[sign] === 'not-shown'))
    : [];
