/** What a running server does beside answering: keeps audit heads, writes what waits when it ends, keeps words out of its output. */
import { flushReads, onAuditFailure } from '#data/audit/audit.ts';
import { storeHeads } from '#data/audit/audit-heads.ts';
import { perStore } from '#data/database/per-store.ts';
import { clinicIds } from '#data/patients/people.ts';
import type { Runtime } from '../runtime.ts';
import { faultOf, telemetry } from '../telemetry/telemetry.ts';

const hour = 3_600_000;

export const storeHeadsNow = async (at: Runtime): Promise<number> => {
  await flushReads(at.store);
  return storeHeads(at.store, at.keys.auditKeys, await clinicIds(at.store), Date.now());
};

/** When heads were kept last, for readiness; null = not yet. */
export const headsState = perStore('heads-state', (): { keptAt: number | null } => ({ keptAt: null }));

const storeOrReport = async (at: Runtime): Promise<void> => {
  try {
    await storeHeadsNow(at);
    headsState(at.store).keptAt = Date.now();
  } catch (error) {
    telemetry().log.error({ fault: faultOf(error) }, 'audit-heads');
  }
};

const reportAuditFailure = (error: unknown, waiting: number): void => {
  telemetry().metrics.auditFailure();
  telemetry().log.error({ fault: faultOf(error), waiting }, 'audit-not-written');
};

/**
 * The page framework prints a fault with its text, which may quote a record. What it hands over is
 * logged by kind and place instead. Called once the server has started: a reason why it could not
 * is for the person at the keyboard.
 */
export const keepWordsOut = (): void => {
  console.error = (...parts: unknown[]) => {
    const fault = parts.find((part) => part instanceof Error) ?? parts[0];
    telemetry().log.error({ fault: faultOf(fault) }, 'page');
  };
  console.warn = (...parts: unknown[]) => {
    telemetry().log.warn({ parts: parts.length }, 'page-warning');
  };
};

const held = globalThis as typeof globalThis & { loadgateEnd?: () => Promise<unknown> };

/** Heads at the start, every hour, and at the end, when the server has closed its doors. */
export const keepWhileRunning = (at: Runtime): void => {
  onAuditFailure(at.store, reportAuditFailure);
  if (at.settings.JOBS) {
    void storeOrReport(at);
    setInterval(() => void storeOrReport(at), hour).unref();
  }
  held.loadgateEnd = () => (at.settings.JOBS ? storeOrReport(at) : flushReads(at.store));
};
