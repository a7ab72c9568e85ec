/**
 * Where random tests begin. They begin alike on every run, so that a change is judged by itself and what fails can be
 * run again; FETTLE_SEED takes another beginning ('fresh' a new one, which is printed), and `npm run fuzz` always does.
 */
import fc from 'fast-check';

const usual = 20_261_126;
const asked = process.env['FETTLE_SEED'] ?? '';
const seed = asked === 'fresh' ? Date.now() % 0x7fff_ffff : asked === '' ? usual : Number(asked);
if (!Number.isInteger(seed)) throw new Error(`FETTLE_SEED is '${asked}': a whole number or 'fresh' is wanted`);
if (seed !== usual) console.log(`random tests begin at FETTLE_SEED=${seed}`);

fc.configureGlobal({ ...fc.readConfigureGlobal(), seed });
