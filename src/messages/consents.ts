/** What a patient is asked to consent to. */
import type { ConsentKind } from '#core/episode/consent.ts';
import { textOf } from './every-language.ts';
import { asTyped, type Text } from './text.ts';

/** `own` is the wording of the clinic, which stays in the words it was written in; null where it has none. */
export const consentText = (kind: ConsentKind, own: string | null): Text =>
  own === null ? textOf('consents', kind) : asTyped(own);
