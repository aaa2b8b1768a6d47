// The shared library from Node through the package koffi:
//   npm install koffi && node gas.js FOLDER/lib/liboverwater.so
const koffi = require('koffi');

const library = koffi.load(process.argv[2]);
koffi.struct('ow_error', {
  size: 'size_t', status: 'int32_t', reserved: 'int32_t', value: 'double',
  code: koffi.array('char', 32, 'String'), parameter: koffi.array('char', 64, 'String'),
  message: 'void *', message_capacity: 'size_t', message_needed: 'size_t',
});
const version = library.func('const char *ow_version(void)');
const abiVersion = library.func('int32_t ow_abi_version(void)');
const errorSize = library.func('size_t ow_error_size(void)');
const vapourPressure = library.func(
  'int32_t ow_vapour_pressure(double temperature_c, _Out_ double *kpa, _Inout_ ow_error *error)');
const vapourPressures = library.func('int32_t ow_vapour_pressure_array(size_t count, const double *temperature_c, '
  + 'intptr_t temperature_stride, _Out_ double *kpa, intptr_t kpa_stride, ow_error *error)');
const respond = library.func('int32_t ow_respond(const char *request, size_t length, _Out_ char *buffer, '
  + 'size_t capacity, _Out_ size_t *needed, ow_error *error)');

if (abiVersion() !== 1 || Number(errorSize()) !== koffi.sizeof('ow_error')) {
  throw new Error('the library does not fit this program');
}
console.log(`overwater ${version()}`);

const one = [0];
vapourPressure(20.0, one, null);
console.log(`20 degC: ${one[0].toFixed(4)} kPa`);

const temperatures = Float64Array.from([0, 25, 50, NaN, 100]);
const pressures = new Float64Array(temperatures.length);
vapourPressures(temperatures.length, temperatures, 8, pressures, 8, null);
console.log(`column: ${Array.from(pressures, (value) => value.toFixed(4).toLowerCase()).join(', ')}`);

const message = Buffer.alloc(512);
const error = {
  size: koffi.sizeof('ow_error'), status: 0, reserved: 0, value: 0, code: '', parameter: '',
  message, message_capacity: message.length, message_needed: 0,
};
const status = vapourPressure(293.15, one, error);
const text = message.toString('utf8', 0, Number(error.message_needed) - 1);
console.log(`refused: ${status} ${error.code} ${error.value} ${text}`);

const request = '{"format": 1, "task": "weigh", "request": {"format": 1, "formula": "H2O2"}}';
const needed = [0];
respond(request, Buffer.byteLength(request), null, 0, needed, null);
const answer = Buffer.alloc(Number(needed[0]));
respond(request, Buffer.byteLength(request), answer, answer.length, needed, null);
const weighed = JSON.parse(answer.toString('utf8', 0, answer.length - 1)).answer;
console.log(`${weighed.formula}: ${weighed.molar_mass_g_per_mol} g/mol`);
