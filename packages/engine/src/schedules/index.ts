export { doorSchedule, type ScheduledDoor, type ScheduledLeaf } from './door-schedule.ts';
export { drawerSchedule, type ScheduledDrawer } from './drawer-schedule.ts';
export { type HardwareSetting, hardwareSchedule, type ScheduledHardware } from './hardware-schedule.ts';
export { type ScheduledVentLayer, ventSchedule } from './vent-schedule.ts';
