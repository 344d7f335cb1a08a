/** The clinic's page of phones says which were ended, by whom and when. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it, vi } from 'vitest';
import { AccessScreen, type AccessScreenProps } from '#ui/clinician/access/access-screen.tsx';

vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => undefined }) }));

type Phone = AccessScreenProps['phones']['phones'][number];

const screen = (phone: Partial<Phone>): string =>
  renderToStaticMarkup(
    <AccessScreen
      patientId="p"
      patientName="Test Person"
      origin="http://127.0.0.1:3000"
      zone="Europe/Lisbon"
      when={String}
      calendar={null}
      team={{ members: [], colleagues: [], emergencyAccesses: [] }}
      phones={{
        invitations: [],
        phones: [{ id: 'one', enrolledAt: Date.UTC(2026, 2, 2), state: 'in-use', ended: null, ...phone }],
      }}
    />,
  );

describe('a phone of the patient', () => {
  const at = Date.UTC(2026, 2, 10, 17, 42);
  it.each<[Phone['ended'], string, boolean]>([
    [null, 'In use', true],
    [{ at, by: 'patient' }, 'Ended by the patient, as lost, 10 Mar 2026, 17:42', false],
    [{ at, by: 'clinic' }, 'Ended by the clinic 10 Mar 2026, 17:42', false],
  ])('ended: %j', (ended, words, canBeEnded) => {
    const html = screen({ ended });
    expect(html).toContain(words);
    expect(html.includes('>End<')).toBe(canBeEnded);
  });
});
