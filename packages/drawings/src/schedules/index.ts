export { doorTable } from './door-table.ts';
export { drawerTable } from './drawer-table.ts';
export { hardwareTable } from './hardware-table.ts';
export { kindOfHardware } from './set-words.ts';
export { ventTable } from './vent-table.ts';
