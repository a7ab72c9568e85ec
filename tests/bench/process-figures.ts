import { readFileSync } from 'node:fs';

/** What the system tells of a process; undefined where it does not tell. */

export function residentMegabytes(processId: number | undefined): number | undefined {
  try {
    const status = readFileSync(`/proc/${processId}/status`, 'utf8');
    return Number(/^VmRSS:\s+(\d+) kB/m.exec(status)?.[1]) / 1000;
  } catch {
    return undefined;
  }
}

/**
 * Time of processors that it has used so far, all its threads together: unlike times by the clock it hardly depends on
 * what else the machine does. In steps of 10 ms.
 */
export function processorMs(processId: number | undefined): number | undefined {
  try {
    const status = readFileSync(`/proc/${processId}/stat`, 'utf8');
    // After the name, which may hold anything but ends with the last parenthesis: the 12th and 13th figure.
    const figures = status.slice(status.lastIndexOf(')') + 2).split(' ');
    return (Number(figures[11]) + Number(figures[12])) * 10;
  } catch {
    return undefined;
  }
}
