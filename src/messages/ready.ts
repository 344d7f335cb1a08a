/** Sentences a clinician may start a message from, and messages that are one of them. */
import type { ready } from './en/sentences/ready.ts';
import { everyLanguage, textOf } from './every-language.ts';
import { asTyped, type Text } from './text.ts';

export type ReadyKey = keyof typeof ready;

const readyText = (key: ReadyKey): Text => textOf('ready', key);

export const readySentences: readonly { readonly key: ReadyKey; readonly text: Text }[] = (
  Object.keys(everyLanguage.en.sentences.ready) as ReadyKey[]
).map((key) => ({ key, text: readyText(key) }));

/** A message as it was sent: in every language where nobody changed a ready sentence, else as typed. */
export const messageText = (sent: string): Text =>
  readySentences.find(({ text }) => text.en === sent)?.text ?? asTyped(sent);
