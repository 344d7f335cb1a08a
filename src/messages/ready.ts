/** Sentences a clinician may start a message from, and messages that are one of them. */
import type { ready } from './en/sentences/ready.ts';
import { everyLanguage, textOf } from './every-language.ts';
import { asTyped, type Text } from './text.ts';

export type ReadyKey = keyof typeof ready;

export const readyText = (key: ReadyKey): Text => textOf('ready', key);

const texts = (Object.keys(everyLanguage.en.sentences.ready) as ReadyKey[]).map(readyText);

/** A message as it was sent: in every language where nobody changed a ready sentence, else as typed. */
export const messageText = (sent: string): Text => texts.find(({ en }) => en === sent) ?? asTyped(sent);
