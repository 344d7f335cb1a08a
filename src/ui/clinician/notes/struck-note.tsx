/** A note that was entered in error, whole: struck through, each part with its heading and its mark. */
import { noteParts } from '#core/episode/visit-note.ts';
import { say as sayCorrection } from '#messages/en/staff/corrections.ts';
import { say } from '#messages/en/staff/episode/visit-notes.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';

/** As the corrections of a page have it: by the names of its fields. */
export const StruckNote = ({ entered }: { readonly entered: Readonly<Record<string, unknown>> }) => (
  <Disclosure summary={say('struck.read')}>
    <p>
      <strong>{sayCorrection('entered-in-error')}.</strong> {say('struck.about')}
    </p>
    {noteParts.flatMap((part) => {
      const text = entered[part];
      return typeof text === 'string' && text !== ''
        ? [
            <div key={part} className="note-part">
              <h4>{part === 'text' ? say('without-headings') : say(`part.${part}`)}</h4>
              <p className="typed-text">
                <s>{text}</s>
              </p>
            </div>,
          ]
        : [];
    })}
  </Disclosure>
);
