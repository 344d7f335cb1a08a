/** Fifty people saving at once, each the next session as soon as the last is acknowledged. */
import { takeSession } from '#data/entries/take-entry.ts';
import { accessTo } from '../group/make-group.ts';
import { patientId } from '../group/plan.ts';
import { percentileOf } from '../pairs.ts';
import { type Measured, type Part, rounded } from '../part.ts';
import { instantOf, sessionToSend, withCopies } from './sessions-to-send.ts';

const clients = 50;
const leastMs = 10_000;

export const clientsPart: Part = {
  name: 'clients',
  about: '50 clients saving at once',
  run: (settings): Promise<readonly Measured[]> =>
    withCopies(settings.plan, ['clients'], async ([store]) => {
      const latencies: number[] = [];
      const failures: unknown[] = [];
      const counter = { next: 0 };
      const began = performance.now();
      const spent = process.cpuUsage();
      const until = Math.max(began + leastMs, settings.until);
      const client = async (): Promise<void> => {
        while (performance.now() < until) {
          const place = counter.next++;
          const access = accessTo(store!, instantOf(place + 1));
          const patient = (place * 13) % settings.plan.patients;
          const entry = await sessionToSend(access, patient);
          const sent = performance.now();
          try {
            const stored = await takeSession(access, patientId(patient), entry);
            if (stored.kind !== 'stored') failures.push(stored.kind);
          } catch (error) {
            failures.push(error);
          }
          latencies.push(performance.now() - sent);
        }
      };
      await Promise.all(Array.from({ length: clients }, client));
      const seconds = (performance.now() - began) / 1000;
      const { user, system } = process.cpuUsage(spent);
      const figures = {
        saved: latencies.length - failures.length,
        'per second': rounded((latencies.length - failures.length) / seconds),
        // Beside other work on the machine the time of day says little; this is what a save itself takes.
        'processor ms a save': rounded((user + system) / 1000 / latencies.length),
        'p50 ms': rounded(percentileOf(latencies, 50)),
        'p99 ms': rounded(percentileOf(latencies, 99)),
        errors: failures.length,
        ...(failures.length > 0 ? { 'first error': String(failures[0]) } : {}),
      };
      const failed = failures.length > 0;
      return [{ part: 'clients', title: clientsPart.about, bar: null, paired: null, figures, failed }];
    }),
};
