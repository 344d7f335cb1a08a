/** The page of machines: what stands on each, what it stands in the place of, and what is retired. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it, vi } from 'vitest';
import { withRouter } from '#tests/support/with-router.tsx';
import type { MachineAnswer } from '#ui/clinician/answers.ts';
import { MachinesScreen } from '#ui/clinician/machines/machines-screen.tsx';

vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => undefined }) }));

const clock = { zone: 'Europe/Lisbon', now: Date.parse('2026-03-02T09:00:00Z') };
const machine = (over: Partial<MachineAnswer> = {}): MachineAnswer => ({
  ...{ id: 'm1', version: 1, isRetired: false, name: 'Leg press', kind: 'leg-press', loading: 'stack' },
  ...{ place: 'Gym', firstKg: 10, stepKg: 5, lastKg: 20, hasHalfStep: true },
  ...{ writtenAt: clock.now, writtenBy: 'Imelda', earlier: [] },
  ...over,
});
const page = (...machines: readonly MachineAnswer[]) =>
  renderToStaticMarkup(withRouter(<MachinesScreen machines={machines} clock={clock} />));

describe('the page of machines', () => {
  it('says that there is none, what follows from that, and asks for one', () => {
    const html = page();
    expect(html).toContain('Exercises on machines cannot be prescribed until one is');
    expect(html).toContain('action="/forms/machine"');
    expect(html).not.toContain('Retired');
  });

  it('says which loads can be set, half steps among them', () => {
    expect(page(machine())).toContain('5 loads, 10 to 20 kg, 2.5 kg apart.');
    expect(page(machine({ lastKg: 10 }))).toContain('1 load: 10 kg.');
  });

  it('keeps the entry that was corrected readable, and a retired machine with a way back', () => {
    const later = machine({ version: 2, lastKg: 30, earlier: [machine()] });
    expect(page(later)).toContain('1 earlier entry');
    const retired = page(machine({ isRetired: true }));
    expect(retired).toContain('Retired: 1');
    expect(retired).toContain('Bring back');
    expect(retired).toContain('No machine is on the list');
  });
});
