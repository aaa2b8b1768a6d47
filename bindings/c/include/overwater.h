// overwater: gas-collection calculations for school and college chemistry. The C interface.
//
// Generated: do not edit. Every function can be called from C and C++ and from any language that can call C: the signatures use
// double, int32_t, size_t, ptrdiff_t and pointers, nothing else. One calling convention (that of C), names as written here.
//
// RESULTS AND REFUSALS
// Functions that can refuse return a status: OW_OK (0), or another OW_... that says why. What is wrong, with the value, its unit,
// what is allowed and what to do instead, is written to the ow_error whose address is the last argument; NULL there says that
// nobody will read it. Nothing is written to it when the status is OW_OK.
// A function for one number writes NaN to its result when it refuses. A function for columns (..._array) writes nothing at all
// when it refuses; a row with an input out of range, NaN or infinite, or without a result, is NaN and no reason to refuse.
//
// COLUMNS
// Each input and the result is a pointer to the first number and a stride in bytes to the next: sizeof(double) for an array,
// the size of the struct for a field of an array of structs, negative to go backwards, 0 for an input that is the same in every
// row. The result may be one of the inputs (same pointer, same stride) or another field of the same structs; any other overlap
// is OW_OVERLAP. Numbers may stand at any address, aligned or not; aligned arrays with the stride of a double are quickest.
// With a count of 0 nothing is read or written and pointers may be NULL; with a count of 1 strides do not matter.
// A number and the same row of a column are the same to the last bit, on every processor.
//
// POINTERS
// All memory belongs to the caller: nothing is allocated that would have to be freed, nothing is kept after the return. A pointer
// that is not NULL must be valid for what the function reads or writes. NULL where it is not allowed is OW_NULL.
//
// THREADS
// There is no state. Every function may be called at any time from any thread, as long as nobody else writes to the memory that
// it reads, or touches what it writes, during the call. The locale does not matter. Do not call from a signal handler.
//
// VERSIONS
// "Since" says in which version a function came. A function never changes its signature or meaning within an OW_ABI_VERSION.
//
// SAFETY IN THE LABORATORY
// Numbers are no permission: the employer's risk assessment, local rules and licensed practice come first.


#ifndef OVERWATER_H
#define OVERWATER_H

#include <stddef.h>
#include <stdint.h>

// Raised by every change that a program built against the header before would notice. Functions are only added otherwise.
#define OW_ABI_VERSION 1

// Done.
#define OW_OK 0

// A number is NaN or infinite.
#define OW_NOT_A_NUMBER 1

// A number lies outside the range that is accepted.
#define OW_OUT_OF_RANGE 2

// Values that are each allowed do not go together.
#define OW_CONTRADICTION 3

// Something needed was not given.
#define OW_MISSING 4

// The same thing was given twice.
#define OW_GIVEN_TWICE 5

// A text has more than one reading.
#define OW_AMBIGUOUS 6

// A name, or the number of a gas, is not known.
#define OW_UNKNOWN_NAME 7

// A text does not follow its grammar.
#define OW_SYNTAX 8

// A chemical equation cannot be balanced.
#define OW_NO_BALANCE 9

// A chemical equation can be balanced in several independent ways.
#define OW_MANY_BALANCES 10

// A whole number is larger than can be held.
#define OW_TOO_LARGE 11

// The request is understood but cannot be met.
#define OW_CANNOT_BE_MET 12

// A refusal that this list does not have yet, named by `code` in `ow_error`; from `ow_respond`: the answer is an error.
#define OW_REFUSED 99

// A pointer that must not be NULL is NULL.
#define OW_NULL 100

// A struct does not stand at an address that is a multiple of its alignment. Numbers may stand anywhere.
#define OW_MISALIGNED 101

// A stride (in bytes) is shorter than a number, or 0 for a result of several rows.
#define OW_STRIDE 102

// The result overlaps an input and is neither that input nor another field of the same structs.
#define OW_OVERLAP 103

// A count, a stride or a length reaches beyond what an address space can hold.
#define OW_OVERSIZE 104

// `size` in a struct is not its size in this library.
#define OW_STRUCT_SIZE 105

// The buffer is too small; nothing was written to it, and `needed` says how many bytes it takes.
#define OW_BUFFER_TOO_SMALL 106

// A fault of this library; please report it.
#define OW_INTERNAL 199

// Oxygen, O2.
#define OW_GAS_OXYGEN 1

// Nitrogen, N2.
#define OW_GAS_NITROGEN 2

// Air, dry.
#define OW_GAS_AIR 3

// Hydrogen, H2.
#define OW_GAS_HYDROGEN 4

// Carbon dioxide, CO2.
#define OW_GAS_CARBON_DIOXIDE 5

// Carbon monoxide, CO.
#define OW_GAS_CARBON_MONOXIDE 6

// Methane, CH4.
#define OW_GAS_METHANE 7

// Ethane, C2H6.
#define OW_GAS_ETHANE 8

// Ethene, C2H4.
#define OW_GAS_ETHENE 9

// Ethyne, C2H2.
#define OW_GAS_ETHYNE 10

// Propane, C3H8.
#define OW_GAS_PROPANE 11

// Butane, C4H10.
#define OW_GAS_BUTANE 12

// Dinitrogen oxide, N2O.
#define OW_GAS_DINITROGEN_OXIDE 13

// Nitrogen monoxide, NO.
#define OW_GAS_NITROGEN_MONOXIDE 14

// Nitrogen dioxide, NO2.
#define OW_GAS_NITROGEN_DIOXIDE 15

// Sulfur dioxide, SO2.
#define OW_GAS_SULFUR_DIOXIDE 16

// Hydrogen sulfide, H2S.
#define OW_GAS_HYDROGEN_SULFIDE 17

// Hydrogen chloride, HCl.
#define OW_GAS_HYDROGEN_CHLORIDE 18

// Ammonia, NH3.
#define OW_GAS_AMMONIA 19

// Chlorine, Cl2.
#define OW_GAS_CHLORINE 20

// Ozone, O3.
#define OW_GAS_OZONE 21

// Helium, He.
#define OW_GAS_HELIUM 22

// Neon, Ne.
#define OW_GAS_NEON 23

// Argon, Ar.
#define OW_GAS_ARGON 24

// Krypton, Kr.
#define OW_GAS_KRYPTON 25

// Xenon, Xe.
#define OW_GAS_XENON 26

// Sulfur hexafluoride, SF6.
#define OW_GAS_SULFUR_HEXAFLUORIDE 27

// Room for the name of a code, its final NUL included.
#define OW_CODE_BYTES 32

// Room for the name of a parameter, its final NUL included.
#define OW_PARAMETER_BYTES 64

// Why a function refused. The caller owns it and the buffer that `message` points to; nothing needs to be freed.
//
// Before the first call set `size` to `sizeof(ow_error)`, `message` and `message_capacity` to a buffer or to NULL and 0, the
// rest to 0 (`ow_error error = {sizeof(ow_error)};` does). It is written only where the status is not OW_OK. One for each
// thread. All texts are UTF-8 and end with NUL; one that does not fit is cut between two characters.
typedef struct {
    // `sizeof(ow_error)`, set by the caller.
    size_t size;
    // The status that was returned.
    int32_t status;
    // 0.
    int32_t reserved;
    // The number that was refused; NaN where it was none.
    double value;
    // The stable name of the refusal, as in `out_of_range`.
    char code[OW_CODE_BYTES];
    // The parameter that it is about, as in `temperature_c`; empty where it is about none.
    char parameter[OW_PARAMETER_BYTES];
    // The caller's buffer for a sentence: the value with its unit, what is allowed, what to do instead. May be NULL.
    char *message;
    // How many bytes `message` has room for.
    size_t message_capacity;
    // How many bytes the whole message takes, its final NUL included.
    size_t message_needed;
} ow_error;

#ifdef __cplusplus
extern "C" {
#endif // __cplusplus

// The OW_ABI_VERSION that the library was built with: compare it with that of your header. Since 0.1.0.
int32_t ow_abi_version(void);

// The version of the library, as in "0.1.0"; lives as long as the library is loaded. Since 0.1.0.
const char *ow_version(void);

// Version, target, width of a pointer and kind of build in one line; lives as long as the library is loaded. Since 0.1.0.
const char *ow_build_info(void);

// `sizeof(ow_error)` in this library, for callers without the header. Since 0.1.0.
size_t ow_error_size(void);

// Answers a request in JSON with JSON, both UTF-8.
//
// request: `length` bytes, no final NUL needed; bytes that are no JSON are refused like any other request.
// buffer: room for `capacity` bytes; the answer with a final NUL is written there, or nothing when it is too small. May be
//   NULL with the capacity 0, to ask for the length only; it must not overlap the request.
// needed: how many bytes the answer takes, its final NUL included; 0 when there is none.
//
// OW_OK: the answer is in the buffer. OW_REFUSED: an error in JSON is in the buffer. OW_BUFFER_TOO_SMALL: call again with
// `needed` bytes; the same request gives the same bytes. Other statuses: there is no answer, see `error`.
// Since 0.1.0.
int32_t ow_respond(const char *request,
                   size_t length,
                   char *buffer,
                   size_t capacity,
                   size_t *needed,
                   ow_error *error);

// Pressure at the place in kPa.
//
// sea_level_pressure_kpa: pressure reduced to sea level, 85 to 110 kPa (the lowest and highest ever
//   reported, rounded outwards).
// altitude_m: height above sea level, -450 to 5500 m (the lowest and the highest places where people live).
// Source: ISO 2533:1975 standard atmosphere, troposphere (also ICAO Doc 7488/3).
// Since 0.1.0.
int32_t ow_station_pressure(double sea_level_pressure_kpa,
                            double altitude_m,
                            double *station_pressure_kpa,
                            ow_error *error);

// `ow_station_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_station_pressure_array(size_t count,
                                  const double *sea_level_pressure_kpa,
                                  ptrdiff_t sea_level_pressure_kpa_stride,
                                  const double *altitude_m,
                                  ptrdiff_t altitude_m_stride,
                                  double *station_pressure_kpa,
                                  ptrdiff_t station_pressure_kpa_stride,
                                  ow_error *error);

// Pressure reduced to sea level in kPa.
//
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// altitude_m: height above sea level, -450 to 5500 m (the lowest and the highest places where people live).
// Source: ISO 2533:1975 standard atmosphere, troposphere (also ICAO Doc 7488/3).
// Since 0.1.0.
int32_t ow_sea_level_pressure(double pressure_kpa,
                              double altitude_m,
                              double *sea_level_pressure_kpa,
                              ow_error *error);

// `ow_sea_level_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_sea_level_pressure_array(size_t count,
                                    const double *pressure_kpa,
                                    ptrdiff_t pressure_kpa_stride,
                                    const double *altitude_m,
                                    ptrdiff_t altitude_m_stride,
                                    double *sea_level_pressure_kpa,
                                    ptrdiff_t sea_level_pressure_kpa_stride,
                                    ow_error *error);

// Pressure at a low place in kPa.
//
// sea_level_pressure_kpa: pressure reduced to sea level, 85 to 110 kPa (the lowest and highest ever
//   reported, rounded outwards).
// altitude_m: height above sea level, -450 to 750 m (the reduction for low stations holds below 750 m).
// air_temperature_c: temperature of the outside air, -50 to 50 degC (weather where people live).
// air_vapour_pressure_kpa: pressure of the vapour in the outside air, 0 to 6 kPa (from dry air to a dew
//   point of 36 degC).
// Source: WMO-No. 8, guide to instruments and methods of observation, part I, chapter 3, annex 3.A, from
//   memory.
// Since 0.1.0.
int32_t ow_low_level_station_pressure(double sea_level_pressure_kpa,
                                      double altitude_m,
                                      double air_temperature_c,
                                      double air_vapour_pressure_kpa,
                                      double *station_pressure_wmo_kpa,
                                      ow_error *error);

// `ow_low_level_station_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_low_level_station_pressure_array(size_t count,
                                            const double *sea_level_pressure_kpa,
                                            ptrdiff_t sea_level_pressure_kpa_stride,
                                            const double *altitude_m,
                                            ptrdiff_t altitude_m_stride,
                                            const double *air_temperature_c,
                                            ptrdiff_t air_temperature_c_stride,
                                            const double *air_vapour_pressure_kpa,
                                            ptrdiff_t air_vapour_pressure_kpa_stride,
                                            double *station_pressure_wmo_kpa,
                                            ptrdiff_t station_pressure_wmo_kpa_stride,
                                            ow_error *error);

// Pressure reduced to sea level from a low place in kPa.
//
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// altitude_m: height above sea level, -450 to 750 m (the reduction for low stations holds below 750 m).
// air_temperature_c: temperature of the outside air, -50 to 50 degC (weather where people live).
// air_vapour_pressure_kpa: pressure of the vapour in the outside air, 0 to 6 kPa (from dry air to a dew
//   point of 36 degC).
// Source: WMO-No. 8, guide to instruments and methods of observation, part I, chapter 3, annex 3.A, from
//   memory.
// Since 0.1.0.
int32_t ow_low_level_sea_level_pressure(double pressure_kpa,
                                        double altitude_m,
                                        double air_temperature_c,
                                        double air_vapour_pressure_kpa,
                                        double *sea_level_pressure_wmo_kpa,
                                        ow_error *error);

// `ow_low_level_sea_level_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_low_level_sea_level_pressure_array(size_t count,
                                              const double *pressure_kpa,
                                              ptrdiff_t pressure_kpa_stride,
                                              const double *altitude_m,
                                              ptrdiff_t altitude_m_stride,
                                              const double *air_temperature_c,
                                              ptrdiff_t air_temperature_c_stride,
                                              const double *air_vapour_pressure_kpa,
                                              ptrdiff_t air_vapour_pressure_kpa_stride,
                                              double *sea_level_pressure_wmo_kpa,
                                              ptrdiff_t sea_level_pressure_wmo_kpa_stride,
                                              ow_error *error);

// Gravity at the place in m/s2.
//
// latitude_deg: latitude, -90 to 90 deg (from pole to pole).
// altitude_m: height above sea level, -450 to 5500 m (the lowest and the highest places where people live).
// Source: NIMA TR8350.2, World Geodetic System 1984, equations 4-1 and 4-3, from memory.
// Since 0.1.0.
int32_t ow_gravity(double latitude_deg, double altitude_m, double *gravity_m_per_s2, ow_error *error);

// `ow_gravity` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_gravity_array(size_t count,
                         const double *latitude_deg,
                         ptrdiff_t latitude_deg_stride,
                         const double *altitude_m,
                         ptrdiff_t altitude_m_stride,
                         double *gravity_m_per_s2,
                         ptrdiff_t gravity_m_per_s2_stride,
                         ow_error *error);

// Gravity at sea level, series of 1980 in m/s2.
//
// latitude_deg: latitude, -90 to 90 deg (from pole to pole).
// Source: Moritz, Geodetic Reference System 1980, Bull. Geod. 54 (1980) 395, from memory.
// Since 0.1.0.
int32_t ow_gravity_1980(double latitude_deg, double *gravity_1980_m_per_s2, ow_error *error);

// `ow_gravity_1980` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_gravity_1980_array(size_t count,
                              const double *latitude_deg,
                              ptrdiff_t latitude_deg_stride,
                              double *gravity_1980_m_per_s2,
                              ptrdiff_t gravity_1980_m_per_s2_stride,
                              ow_error *error);

// Pressure from the mercury barometer in kPa.
//
// barometer_mm: reading of the mercury barometer, 300 to 850 mm (pressures from sea level to the highest
//   schools).
// temperature_c: temperature, 0 to 45 degC (a room that people can work in).
// gravity_m_per_s2: gravity at the place, 9.76 to 9.84 m/s2 (from high mountains at the equator to the
//   poles).
// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
// Since 0.1.0.
int32_t ow_mercury_barometer_brass_scale(double barometer_mm,
                                         double temperature_c,
                                         double gravity_m_per_s2,
                                         double *barometer_pressure_kpa,
                                         ow_error *error);

// `ow_mercury_barometer_brass_scale` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_mercury_barometer_brass_scale_array(size_t count,
                                               const double *barometer_mm,
                                               ptrdiff_t barometer_mm_stride,
                                               const double *temperature_c,
                                               ptrdiff_t temperature_c_stride,
                                               const double *gravity_m_per_s2,
                                               ptrdiff_t gravity_m_per_s2_stride,
                                               double *barometer_pressure_kpa,
                                               ptrdiff_t barometer_pressure_kpa_stride,
                                               ow_error *error);

// Pressure from the mercury barometer in kPa.
//
// barometer_mm: reading of the mercury barometer, 300 to 850 mm (pressures from sea level to the highest
//   schools).
// temperature_c: temperature, 0 to 45 degC (a room that people can work in).
// gravity_m_per_s2: gravity at the place, 9.76 to 9.84 m/s2 (from high mountains at the equator to the
//   poles).
// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
// Since 0.1.0.
int32_t ow_mercury_barometer_true_scale(double barometer_mm,
                                        double temperature_c,
                                        double gravity_m_per_s2,
                                        double *barometer_pressure_kpa,
                                        ow_error *error);

// `ow_mercury_barometer_true_scale` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_mercury_barometer_true_scale_array(size_t count,
                                              const double *barometer_mm,
                                              ptrdiff_t barometer_mm_stride,
                                              const double *temperature_c,
                                              ptrdiff_t temperature_c_stride,
                                              const double *gravity_m_per_s2,
                                              ptrdiff_t gravity_m_per_s2_stride,
                                              double *barometer_pressure_kpa,
                                              ptrdiff_t barometer_pressure_kpa_stride,
                                              ow_error *error);

// Relative humidity over saturated brine in %.
//
// temperature_c: temperature, 10 to 40 degC (range of the handbook's values for brine).
// Uncertainty of the relation: relative humidity within 2 %.
// Source: CRC Handbook of Chemistry and Physics, section 15, constant humidity solutions (Wexler).
// Since 0.1.0.
int32_t ow_brine_humidity(double temperature_c, double *brine_humidity_percent, ow_error *error);

// `ow_brine_humidity` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_brine_humidity_array(size_t count,
                                const double *temperature_c,
                                ptrdiff_t temperature_c_stride,
                                double *brine_humidity_percent,
                                ptrdiff_t brine_humidity_percent_stride,
                                ow_error *error);

// Relative humidity over saturated brine, Greenspan in %.
//
// temperature_c: temperature, 0 to 50 degC (where the cubic was compared).
// Source: Greenspan, J. Res. Natl. Bur. Stand. 81A (1977) 89, from memory.
// Since 0.1.0.
int32_t ow_brine_humidity_greenspan_1977(double temperature_c,
                                         double *brine_humidity_greenspan_percent,
                                         ow_error *error);

// `ow_brine_humidity_greenspan_1977` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_brine_humidity_greenspan_1977_array(size_t count,
                                               const double *temperature_c,
                                               ptrdiff_t temperature_c_stride,
                                               double *brine_humidity_greenspan_percent,
                                               ptrdiff_t brine_humidity_greenspan_percent_stride,
                                               ow_error *error);

// Vapour pressure over saturated brine in kPa.
//
// temperature_c: temperature, 10 to 40 degC (range of the handbook's values for brine).
// Uncertainty of the relation: relative humidity within 2 %.
// Source: CRC Handbook of Chemistry and Physics, section 15, constant humidity solutions (Wexler).
// Since 0.1.0.
int32_t ow_brine_vapour_pressure(double temperature_c, double *brine_vapour_pressure_kpa, ow_error *error);

// `ow_brine_vapour_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_brine_vapour_pressure_array(size_t count,
                                       const double *temperature_c,
                                       ptrdiff_t temperature_c_stride,
                                       double *brine_vapour_pressure_kpa,
                                       ptrdiff_t brine_vapour_pressure_kpa_stride,
                                       ow_error *error);

// Vapour pressure over saturated brine in kPa.
//
// temperature_c: temperature, 0 to 50 degC (where the cubic was compared).
// Source: CRC Handbook of Chemistry and Physics, section 15, constant humidity solutions (Wexler).
// Since 0.1.0.
int32_t ow_brine_vapour_pressure_greenspan_1977(double temperature_c,
                                                double *brine_vapour_pressure_kpa,
                                                ow_error *error);

// `ow_brine_vapour_pressure_greenspan_1977` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_brine_vapour_pressure_greenspan_1977_array(size_t count,
                                                      const double *temperature_c,
                                                      ptrdiff_t temperature_c_stride,
                                                      double *brine_vapour_pressure_kpa,
                                                      ptrdiff_t brine_vapour_pressure_kpa_stride,
                                                      ow_error *error);

// Vapour pressure over a dilute solution in kPa.
//
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// molality_mol_per_kg: molality of the salt, 0 to 2 mol/kg (beyond 2 mol/kg Raoult's law goes astray fast).
// ions: ions from one formula of the salt, 1 to 5 (1 for sugar, 2 for sodium chloride, 5 for aluminium
//   sulfate).
// Source: Raoult's law, with the salt counted as its ions.
// Since 0.1.0.
int32_t ow_dilute_brine_vapour_pressure(double temperature_c,
                                        double molality_mol_per_kg,
                                        double ions,
                                        double *dilute_vapour_pressure_kpa,
                                        ow_error *error);

// `ow_dilute_brine_vapour_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_dilute_brine_vapour_pressure_array(size_t count,
                                              const double *temperature_c,
                                              ptrdiff_t temperature_c_stride,
                                              const double *molality_mol_per_kg,
                                              ptrdiff_t molality_mol_per_kg_stride,
                                              const double *ions,
                                              ptrdiff_t ions_stride,
                                              double *dilute_vapour_pressure_kpa,
                                              ptrdiff_t dilute_vapour_pressure_kpa_stride,
                                              ow_error *error);

// Density of saturated brine in g/cm3.
//
// temperature_c: temperature, 10 to 40 degC (range of the handbook's values for brine).
// Source: computed with PHREEQC and its database pitzer.dat.
// Since 0.1.0.
int32_t ow_brine_density(double temperature_c, double *brine_density_g_per_cm3, ow_error *error);

// `ow_brine_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_brine_density_array(size_t count,
                               const double *temperature_c,
                               ptrdiff_t temperature_c_stride,
                               double *brine_density_g_per_cm3,
                               ptrdiff_t brine_density_g_per_cm3_stride,
                               ow_error *error);

// Molar volume of a gas in dm3/mol.
//
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// Source: ideal gas equation.
// Since 0.1.0.
int32_t ow_molar_volume(double temperature_c,
                        double pressure_kpa,
                        double *molar_volume_dm3_per_mol,
                        ow_error *error);

// `ow_molar_volume` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_molar_volume_array(size_t count,
                              const double *temperature_c,
                              ptrdiff_t temperature_c_stride,
                              const double *pressure_kpa,
                              ptrdiff_t pressure_kpa_stride,
                              double *molar_volume_dm3_per_mol,
                              ptrdiff_t molar_volume_dm3_per_mol_stride,
                              ow_error *error);

// Amount in mmol.
//
// volume_cm3: volume, 0.01 to 1000000 cm3 (what school glassware and a room can hold).
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// inside_minus_outside_mm: water level inside less level outside, -2000 to 2000 mm (taller than any school
//   gas jar or eudiometer).
// Source: ideal gas equation.
// Since 0.1.0.
int32_t ow_dry_amount(double volume_cm3,
                      double temperature_c,
                      double pressure_kpa,
                      double inside_minus_outside_mm,
                      double *amount_mmol,
                      ow_error *error);

// `ow_dry_amount` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_dry_amount_array(size_t count,
                            const double *volume_cm3,
                            ptrdiff_t volume_cm3_stride,
                            const double *temperature_c,
                            ptrdiff_t temperature_c_stride,
                            const double *pressure_kpa,
                            ptrdiff_t pressure_kpa_stride,
                            const double *inside_minus_outside_mm,
                            ptrdiff_t inside_minus_outside_mm_stride,
                            double *amount_mmol,
                            ptrdiff_t amount_mmol_stride,
                            ow_error *error);

// Amount in mmol.
//
// volume_cm3: volume, 0.01 to 1000000 cm3 (what school glassware and a room can hold).
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// inside_minus_outside_mm: water level inside less level outside, -2000 to 2000 mm (taller than any school
//   gas jar or eudiometer).
// vapour_pressure_kpa: vapour pressure of water, 0 to 101.4 kPa (0 for a gas that is dry, up to the vapour
//   pressure at 100 degC).
// Source: ideal gas equation.
// Since 0.1.0.
int32_t ow_dry_amount_with_vapour(double volume_cm3,
                                  double temperature_c,
                                  double pressure_kpa,
                                  double inside_minus_outside_mm,
                                  double vapour_pressure_kpa,
                                  double *amount_mmol,
                                  ow_error *error);

// `ow_dry_amount_with_vapour` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_dry_amount_with_vapour_array(size_t count,
                                        const double *volume_cm3,
                                        ptrdiff_t volume_cm3_stride,
                                        const double *temperature_c,
                                        ptrdiff_t temperature_c_stride,
                                        const double *pressure_kpa,
                                        ptrdiff_t pressure_kpa_stride,
                                        const double *inside_minus_outside_mm,
                                        ptrdiff_t inside_minus_outside_mm_stride,
                                        const double *vapour_pressure_kpa,
                                        ptrdiff_t vapour_pressure_kpa_stride,
                                        double *amount_mmol,
                                        ptrdiff_t amount_mmol_stride,
                                        ow_error *error);

// Pressure of the dry gas in kPa.
//
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// inside_minus_outside_mm: water level inside less level outside, -2000 to 2000 mm (taller than any school
//   gas jar or eudiometer).
// Source: Dalton's law of partial pressures.
// Since 0.1.0.
int32_t ow_dry_pressure(double temperature_c,
                        double pressure_kpa,
                        double inside_minus_outside_mm,
                        double *dry_pressure_kpa,
                        ow_error *error);

// `ow_dry_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_dry_pressure_array(size_t count,
                              const double *temperature_c,
                              ptrdiff_t temperature_c_stride,
                              const double *pressure_kpa,
                              ptrdiff_t pressure_kpa_stride,
                              const double *inside_minus_outside_mm,
                              ptrdiff_t inside_minus_outside_mm_stride,
                              double *dry_pressure_kpa,
                              ptrdiff_t dry_pressure_kpa_stride,
                              ow_error *error);

// Volume of the gas in cm3.
//
// amount_mmol: amount, 0.000001 to 100000 mmol (what school glassware and a room can hold).
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// inside_minus_outside_mm: water level inside less level outside, -2000 to 2000 mm (taller than any school
//   gas jar or eudiometer).
// Source: ideal gas equation.
// Since 0.1.0.
int32_t ow_volume_over_water(double amount_mmol,
                             double temperature_c,
                             double pressure_kpa,
                             double inside_minus_outside_mm,
                             double *gas_volume_cm3,
                             ow_error *error);

// `ow_volume_over_water` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_volume_over_water_array(size_t count,
                                   const double *amount_mmol,
                                   ptrdiff_t amount_mmol_stride,
                                   const double *temperature_c,
                                   ptrdiff_t temperature_c_stride,
                                   const double *pressure_kpa,
                                   ptrdiff_t pressure_kpa_stride,
                                   const double *inside_minus_outside_mm,
                                   ptrdiff_t inside_minus_outside_mm_stride,
                                   double *gas_volume_cm3,
                                   ptrdiff_t gas_volume_cm3_stride,
                                   ow_error *error);

// Fraction of oxygen in the dry gas.
//
// rejected_cm3: gas that has passed before, 0 to 100000 cm3 (what school glassware and a room can hold).
// volume_cm3: volume, 0.01 to 1000000 cm3 (what school glassware and a room can hold).
// free_volume_cm3: free volume of flask and tube, 1 to 20000 cm3 (from a small boiling tube to the largest
//   flask on a bench).
// Source: well-mixed flask at constant pressure: the air left falls as exp(-volume passed / free volume).
// Since 0.1.0.
int32_t ow_oxygen_fraction(double rejected_cm3,
                           double volume_cm3,
                           double free_volume_cm3,
                           double *oxygen_fraction,
                           ow_error *error);

// `ow_oxygen_fraction` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_oxygen_fraction_array(size_t count,
                                 const double *rejected_cm3,
                                 ptrdiff_t rejected_cm3_stride,
                                 const double *volume_cm3,
                                 ptrdiff_t volume_cm3_stride,
                                 const double *free_volume_cm3,
                                 ptrdiff_t free_volume_cm3_stride,
                                 double *oxygen_fraction,
                                 ptrdiff_t oxygen_fraction_stride,
                                 ow_error *error);

// Oxygen in water under moist air in mg/dm3.
//
// temperature_c: temperature, 0 to 40 degC (the range of the measurements).
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// salinity: salinity on the practical scale, 0 to 40 (from fresh water to the saltiest sea of the
//   measurements).
// Source: Benson and Krause, Limnol. Oceanogr. 25 (1980) 662 and 29 (1984) 620, form of Standard Methods
//   4500-O (from memory; gsw 3.6.23 within 0.025 %).
// Since 0.1.0.
int32_t ow_oxygen_saturation(double temperature_c,
                             double pressure_kpa,
                             double salinity,
                             double *oxygen_saturation_mg_per_dm3,
                             ow_error *error);

// `ow_oxygen_saturation` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_oxygen_saturation_array(size_t count,
                                   const double *temperature_c,
                                   ptrdiff_t temperature_c_stride,
                                   const double *pressure_kpa,
                                   ptrdiff_t pressure_kpa_stride,
                                   const double *salinity,
                                   ptrdiff_t salinity_stride,
                                   double *oxygen_saturation_mg_per_dm3,
                                   ptrdiff_t oxygen_saturation_mg_per_dm3_stride,
                                   ow_error *error);

// Density of mercury in kg/m3.
//
// temperature_c: temperature, 0 to 100 degC (range of the density of mercury).
// Source: Sommer and Poziemski, Metrologia 30 (1994) 665, from memory.
// Since 0.1.0.
int32_t ow_mercury_density(double temperature_c, double *mercury_density_kg_per_m3, ow_error *error);

// `ow_mercury_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_mercury_density_array(size_t count,
                                 const double *temperature_c,
                                 ptrdiff_t temperature_c_stride,
                                 double *mercury_density_kg_per_m3,
                                 ptrdiff_t mercury_density_kg_per_m3_stride,
                                 ow_error *error);

// Pressure of the column in kPa.
//
// column_mm: height of the column, -2000 to 2000 mm (taller than any school manometer).
// liquid_density_g_per_cm3: density of the liquid, 0.5 to 14 g/cm3 (from the lightest oils to mercury).
// gravity_m_per_s2: gravity at the place, 9.76 to 9.84 m/s2 (from high mountains at the equator to the
//   poles).
// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
// Since 0.1.0.
int32_t ow_column_pressure(double column_mm,
                           double liquid_density_g_per_cm3,
                           double gravity_m_per_s2,
                           double *column_pressure_kpa,
                           ow_error *error);

// `ow_column_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_column_pressure_array(size_t count,
                                 const double *column_mm,
                                 ptrdiff_t column_mm_stride,
                                 const double *liquid_density_g_per_cm3,
                                 ptrdiff_t liquid_density_g_per_cm3_stride,
                                 const double *gravity_m_per_s2,
                                 ptrdiff_t gravity_m_per_s2_stride,
                                 double *column_pressure_kpa,
                                 ptrdiff_t column_pressure_kpa_stride,
                                 ow_error *error);

// Height of the column in mm.
//
// column_pressure_kpa: pressure of the column, -120 to 120 kPa (pressures from sea level to the highest
//   schools).
// liquid_density_g_per_cm3: density of the liquid, 0.5 to 14 g/cm3 (from the lightest oils to mercury).
// gravity_m_per_s2: gravity at the place, 9.76 to 9.84 m/s2 (from high mountains at the equator to the
//   poles).
// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
// Since 0.1.0.
int32_t ow_column_height(double column_pressure_kpa,
                         double liquid_density_g_per_cm3,
                         double gravity_m_per_s2,
                         double *column_mm,
                         ow_error *error);

// `ow_column_height` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_column_height_array(size_t count,
                               const double *column_pressure_kpa,
                               ptrdiff_t column_pressure_kpa_stride,
                               const double *liquid_density_g_per_cm3,
                               ptrdiff_t liquid_density_g_per_cm3_stride,
                               const double *gravity_m_per_s2,
                               ptrdiff_t gravity_m_per_s2_stride,
                               double *column_mm,
                               ptrdiff_t column_mm_stride,
                               ow_error *error);

// Pressure of the column in kPa.
//
// column_mm: height of the column, -2000 to 2000 mm (taller than any school manometer).
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// gravity_m_per_s2: gravity at the place, 9.76 to 9.84 m/s2 (from high mountains at the equator to the
//   poles).
// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
// Since 0.1.0.
int32_t ow_water_column_pressure(double column_mm,
                                 double temperature_c,
                                 double gravity_m_per_s2,
                                 double *column_pressure_kpa,
                                 ow_error *error);

// `ow_water_column_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_water_column_pressure_array(size_t count,
                                       const double *column_mm,
                                       ptrdiff_t column_mm_stride,
                                       const double *temperature_c,
                                       ptrdiff_t temperature_c_stride,
                                       const double *gravity_m_per_s2,
                                       ptrdiff_t gravity_m_per_s2_stride,
                                       double *column_pressure_kpa,
                                       ptrdiff_t column_pressure_kpa_stride,
                                       ow_error *error);

// Pressure of the column in kPa.
//
// column_mm: height of the column, -2000 to 2000 mm (taller than any school manometer).
// temperature_c: temperature, 0 to 100 degC (range of the density of mercury).
// gravity_m_per_s2: gravity at the place, 9.76 to 9.84 m/s2 (from high mountains at the equator to the
//   poles).
// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
// Since 0.1.0.
int32_t ow_mercury_column_pressure(double column_mm,
                                   double temperature_c,
                                   double gravity_m_per_s2,
                                   double *column_pressure_kpa,
                                   ow_error *error);

// `ow_mercury_column_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_mercury_column_pressure_array(size_t count,
                                         const double *column_mm,
                                         ptrdiff_t column_mm_stride,
                                         const double *temperature_c,
                                         ptrdiff_t temperature_c_stride,
                                         const double *gravity_m_per_s2,
                                         ptrdiff_t gravity_m_per_s2_stride,
                                         double *column_pressure_kpa,
                                         ptrdiff_t column_pressure_kpa_stride,
                                         ow_error *error);

// Pressure of the column in kPa.
//
// column_mm: height of the column, -2000 to 2000 mm (taller than any school manometer).
// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
// Since 0.1.0.
int32_t ow_conventional_mm_of_water(double column_mm, double *column_pressure_kpa, ow_error *error);

// `ow_conventional_mm_of_water` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_conventional_mm_of_water_array(size_t count,
                                          const double *column_mm,
                                          ptrdiff_t column_mm_stride,
                                          double *column_pressure_kpa,
                                          ptrdiff_t column_pressure_kpa_stride,
                                          ow_error *error);

// Pressure of the column in kPa.
//
// column_mm: height of the column, -2000 to 2000 mm (taller than any school manometer).
// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
// Since 0.1.0.
int32_t ow_conventional_mm_of_mercury(double column_mm, double *column_pressure_kpa, ow_error *error);

// `ow_conventional_mm_of_mercury` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_conventional_mm_of_mercury_array(size_t count,
                                            const double *column_mm,
                                            ptrdiff_t column_mm_stride,
                                            double *column_pressure_kpa,
                                            ptrdiff_t column_pressure_kpa_stride,
                                            ow_error *error);

// Pressure of the column in kPa.
//
// column_mm: height of the column, -2000 to 2000 mm (taller than any school manometer).
// Source: hydrostatics: pressure of a liquid column is density x gravity x height.
// Since 0.1.0.
int32_t ow_torr(double column_mm, double *column_pressure_kpa, ow_error *error);

// `ow_torr` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_torr_array(size_t count,
                      const double *column_mm,
                      ptrdiff_t column_mm_stride,
                      double *column_pressure_kpa,
                      ptrdiff_t column_pressure_kpa_stride,
                      ow_error *error);

// Volume strength in vol.
//
// concentration_mol_per_dm3: concentration of peroxide, 0.005 to 14 mol/dm3 (stronger than about 40 % by
//   mass is not handled in schools).
// molar_volume_dm3_per_mol: molar volume of a gas, 20 to 30 dm3/mol (room conditions anywhere).
// Source: follows from definitions.
// Since 0.1.0.
int32_t ow_volume_strength(double concentration_mol_per_dm3,
                           double molar_volume_dm3_per_mol,
                           double *volume_strength_vol,
                           ow_error *error);

// `ow_volume_strength` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_volume_strength_array(size_t count,
                                 const double *concentration_mol_per_dm3,
                                 ptrdiff_t concentration_mol_per_dm3_stride,
                                 const double *molar_volume_dm3_per_mol,
                                 ptrdiff_t molar_volume_dm3_per_mol_stride,
                                 double *volume_strength_vol,
                                 ptrdiff_t volume_strength_vol_stride,
                                 ow_error *error);

// Concentration of peroxide in mol/dm3.
//
// volume_strength_vol: volume strength, 0.1 to 150 vol (stronger than about 40 % by mass is not handled in
//   schools).
// molar_volume_dm3_per_mol: molar volume of a gas, 20 to 30 dm3/mol (room conditions anywhere).
// Source: definition of volume strength with 2 H2O2 = 2 H2O + O2.
// Since 0.1.0.
int32_t ow_peroxide_concentration(double volume_strength_vol,
                                  double molar_volume_dm3_per_mol,
                                  double *concentration_mol_per_dm3,
                                  ow_error *error);

// `ow_peroxide_concentration` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_peroxide_concentration_array(size_t count,
                                        const double *volume_strength_vol,
                                        ptrdiff_t volume_strength_vol_stride,
                                        const double *molar_volume_dm3_per_mol,
                                        ptrdiff_t molar_volume_dm3_per_mol_stride,
                                        double *concentration_mol_per_dm3,
                                        ptrdiff_t concentration_mol_per_dm3_stride,
                                        ow_error *error);

// Volume of stock to measure in cm3.
//
// stock_mol_per_dm3: concentration of the stock, 0.005 to 14 mol/dm3 (stronger than about 40 % by mass is
//   not handled in schools).
// wanted_mol_per_dm3: concentration wanted, 0.005 to 14 mol/dm3 (stronger than about 40 % by mass is not
//   handled in schools).
// made_up_to_cm3: volume made up to, 0.05 to 10000 cm3 (what school glassware and a room can hold).
// Source: conservation of the amount of solute.
// Since 0.1.0.
int32_t ow_stock_volume(double stock_mol_per_dm3,
                        double wanted_mol_per_dm3,
                        double made_up_to_cm3,
                        double *stock_volume_cm3,
                        ow_error *error);

// `ow_stock_volume` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_stock_volume_array(size_t count,
                              const double *stock_mol_per_dm3,
                              ptrdiff_t stock_mol_per_dm3_stride,
                              const double *wanted_mol_per_dm3,
                              ptrdiff_t wanted_mol_per_dm3_stride,
                              const double *made_up_to_cm3,
                              ptrdiff_t made_up_to_cm3_stride,
                              double *stock_volume_cm3,
                              ptrdiff_t stock_volume_cm3_stride,
                              ow_error *error);

// Concentration of peroxide in mol/dm3.
//
// titre_cm3: titre, 0.05 to 100 cm3 (one reading of a burette to two fillings of it).
// permanganate_mol_per_dm3: concentration of permanganate, 0.0001 to 0.4 mol/dm3 (up to a saturated
//   solution).
// sample_cm3: volume of stock taken, 0.05 to 1000 cm3 (what school glassware and a room can hold).
// made_up_to_cm3: volume made up to, 0.05 to 10000 cm3 (what school glassware and a room can hold).
// aliquot_cm3: volume titrated, 0.05 to 1000 cm3 (what school glassware and a room can hold).
// Source: definition of volume strength with 2 H2O2 = 2 H2O + O2.
// Since 0.1.0.
int32_t ow_assayed_concentration(double titre_cm3,
                                 double permanganate_mol_per_dm3,
                                 double sample_cm3,
                                 double made_up_to_cm3,
                                 double aliquot_cm3,
                                 double *concentration_mol_per_dm3,
                                 ow_error *error);

// `ow_assayed_concentration` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_assayed_concentration_array(size_t count,
                                       const double *titre_cm3,
                                       ptrdiff_t titre_cm3_stride,
                                       const double *permanganate_mol_per_dm3,
                                       ptrdiff_t permanganate_mol_per_dm3_stride,
                                       const double *sample_cm3,
                                       ptrdiff_t sample_cm3_stride,
                                       const double *made_up_to_cm3,
                                       ptrdiff_t made_up_to_cm3_stride,
                                       const double *aliquot_cm3,
                                       ptrdiff_t aliquot_cm3_stride,
                                       double *concentration_mol_per_dm3,
                                       ptrdiff_t concentration_mol_per_dm3_stride,
                                       ow_error *error);

// Titre in cm3.
//
// concentration_mol_per_dm3: concentration of peroxide, 0.005 to 14 mol/dm3 (stronger than about 40 % by
//   mass is not handled in schools).
// permanganate_mol_per_dm3: concentration of permanganate, 0.0001 to 0.4 mol/dm3 (up to a saturated
//   solution).
// sample_cm3: volume of stock taken, 0.05 to 1000 cm3 (what school glassware and a room can hold).
// made_up_to_cm3: volume made up to, 0.05 to 10000 cm3 (what school glassware and a room can hold).
// aliquot_cm3: volume titrated, 0.05 to 1000 cm3 (what school glassware and a room can hold).
// Source: follows from definitions.
// Since 0.1.0.
int32_t ow_expected_titre(double concentration_mol_per_dm3,
                          double permanganate_mol_per_dm3,
                          double sample_cm3,
                          double made_up_to_cm3,
                          double aliquot_cm3,
                          double *titre_cm3,
                          ow_error *error);

// `ow_expected_titre` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_expected_titre_array(size_t count,
                                const double *concentration_mol_per_dm3,
                                ptrdiff_t concentration_mol_per_dm3_stride,
                                const double *permanganate_mol_per_dm3,
                                ptrdiff_t permanganate_mol_per_dm3_stride,
                                const double *sample_cm3,
                                ptrdiff_t sample_cm3_stride,
                                const double *made_up_to_cm3,
                                ptrdiff_t made_up_to_cm3_stride,
                                const double *aliquot_cm3,
                                ptrdiff_t aliquot_cm3_stride,
                                double *titre_cm3,
                                ptrdiff_t titre_cm3_stride,
                                ow_error *error);

// Adiabatic temperature rise in K.
//
// concentration_mol_per_dm3: concentration of peroxide, 0.005 to 14 mol/dm3 (stronger than about 40 % by
//   mass is not handled in schools).
// sample_cm3: volume of stock taken, 0.05 to 1000 cm3 (what school glassware and a room can hold).
// liquid_cm3: volume of liquid, 0 to 100000 cm3 (what school glassware and a room can hold).
// Source: first law: all heat stays in the liquid.
// Since 0.1.0.
int32_t ow_adiabatic_rise(double concentration_mol_per_dm3,
                          double sample_cm3,
                          double liquid_cm3,
                          double *temperature_rise_k,
                          ow_error *error);

// `ow_adiabatic_rise` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_adiabatic_rise_array(size_t count,
                                const double *concentration_mol_per_dm3,
                                ptrdiff_t concentration_mol_per_dm3_stride,
                                const double *sample_cm3,
                                ptrdiff_t sample_cm3_stride,
                                const double *liquid_cm3,
                                ptrdiff_t liquid_cm3_stride,
                                double *temperature_rise_k,
                                ptrdiff_t temperature_rise_k_stride,
                                ow_error *error);

// Density of the peroxide solution, computed in g/cm3.
//
// percent_w_w: grams of peroxide in 100 g, 0.02 to 40 % (stronger than about 40 % by mass is not handled in
//   schools).
// temperature_c: temperature, 0 to 96 degC (the range of the measurements).
// Uncertainty of the relation: 0.2 %, the largest difference from the older tables below 90 % by mass.
// Source: Laliberte, J. Chem. Eng. Data 54 (2009) 1725: density of H2O2 solutions, 0 to 96 degC, mass
//   fraction 0 to 0.996, coefficients as carried by chemicals 1.5.2.
// Since 0.1.0.
int32_t ow_peroxide_density(double percent_w_w,
                            double temperature_c,
                            double *peroxide_density_g_per_cm3,
                            ow_error *error);

// `ow_peroxide_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_peroxide_density_array(size_t count,
                                  const double *percent_w_w,
                                  ptrdiff_t percent_w_w_stride,
                                  const double *temperature_c,
                                  ptrdiff_t temperature_c_stride,
                                  double *peroxide_density_g_per_cm3,
                                  ptrdiff_t peroxide_density_g_per_cm3_stride,
                                  ow_error *error);

// Concentration of peroxide in mol/dm3.
//
// percent_w_w: grams of peroxide in 100 g, 0.02 to 40 % (stronger than about 40 % by mass is not handled in
//   schools).
// temperature_c: temperature, 0 to 96 degC (the range of the measurements).
// Source: definition of volume strength with 2 H2O2 = 2 H2O + O2.
// Since 0.1.0.
int32_t ow_concentration_from_mass(double percent_w_w,
                                   double temperature_c,
                                   double *concentration_mol_per_dm3,
                                   ow_error *error);

// `ow_concentration_from_mass` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_concentration_from_mass_array(size_t count,
                                         const double *percent_w_w,
                                         ptrdiff_t percent_w_w_stride,
                                         const double *temperature_c,
                                         ptrdiff_t temperature_c_stride,
                                         double *concentration_mol_per_dm3,
                                         ptrdiff_t concentration_mol_per_dm3_stride,
                                         ow_error *error);

// Grams of peroxide in 100 g in %.
//
// concentration_mol_per_dm3: concentration of peroxide, 0.005 to 14 mol/dm3 (stronger than about 40 % by
//   mass is not handled in schools).
// temperature_c: temperature, 0 to 96 degC (the range of the measurements).
// Source: follows from definitions.
// Since 0.1.0.
int32_t ow_mass_from_concentration(double concentration_mol_per_dm3,
                                   double temperature_c,
                                   double *percent_by_mass_percent,
                                   ow_error *error);

// `ow_mass_from_concentration` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_mass_from_concentration_array(size_t count,
                                         const double *concentration_mol_per_dm3,
                                         ptrdiff_t concentration_mol_per_dm3_stride,
                                         const double *temperature_c,
                                         ptrdiff_t temperature_c_stride,
                                         double *percent_by_mass_percent,
                                         ptrdiff_t percent_by_mass_percent_stride,
                                         ow_error *error);

// Volume fraction in the air of the room, after the time in ppm.
//
// amount_mmol: amount, 0.000001 to 100000 mmol (what school glassware and a room can hold).
// room_volume_m3: volume of the room, 5 to 100000 m3 (from a store cupboard to a hall).
// temperature_c: temperature, 0 to 45 degC (a room that people can work in).
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// air_changes_per_hour: air changes per hour, 0 to 100 1/h (from a sealed room to a cleanroom).
// time_s: time, 0 to 86400 s (up to a day).
// Source: well-mixed room: what is in the air falls as exp(-air changes x time).
// Since 0.1.0.
int32_t ow_room_concentration(double amount_mmol,
                              double room_volume_m3,
                              double temperature_c,
                              double pressure_kpa,
                              double air_changes_per_hour,
                              double time_s,
                              double *air_concentration_later_ppm,
                              ow_error *error);

// `ow_room_concentration` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_room_concentration_array(size_t count,
                                    const double *amount_mmol,
                                    ptrdiff_t amount_mmol_stride,
                                    const double *room_volume_m3,
                                    ptrdiff_t room_volume_m3_stride,
                                    const double *temperature_c,
                                    ptrdiff_t temperature_c_stride,
                                    const double *pressure_kpa,
                                    ptrdiff_t pressure_kpa_stride,
                                    const double *air_changes_per_hour,
                                    ptrdiff_t air_changes_per_hour_stride,
                                    const double *time_s,
                                    ptrdiff_t time_s_stride,
                                    double *air_concentration_later_ppm,
                                    ptrdiff_t air_concentration_later_ppm_stride,
                                    ow_error *error);

// Second virial coefficient in cm3/mol.
//
// gas: OW_GAS_... of one of oxygen, nitrogen, air, hydrogen, carbon dioxide, carbon monoxide, methane,
//   ethane, ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, sulfur dioxide, hydrogen
//   sulfide, hydrogen chloride, ammonia, chlorine, helium, argon; else OW_CANNOT_BE_MET.
// temperature_c: temperature, 0 to 100 degC; butane: 5 to 100 degC (liquid water at atmospheric pressure).
// Source: fit of this library to the reference equation of state of the gas, evaluated with CoolProp 8.0.0;
//   CRC Handbook of Chemistry and Physics, Virial coefficients of selected gases, after Dymond, Marsh,
//   Wilhoit and Wong, Landolt-Bornstein IV/21A (2002), as carried by chemicals 1.5.2.
// Since 0.1.0.
int32_t ow_second_virial(int32_t gas,
                         double temperature_c,
                         double *second_virial_cm3_per_mol,
                         ow_error *error);

// `ow_second_virial` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_second_virial_array(int32_t gas,
                               size_t count,
                               const double *temperature_c,
                               ptrdiff_t temperature_c_stride,
                               double *second_virial_cm3_per_mol,
                               ptrdiff_t second_virial_cm3_per_mol_stride,
                               ow_error *error);

// Compressibility factor.
//
// gas: OW_GAS_... of one of oxygen, nitrogen, air, hydrogen, carbon dioxide, carbon monoxide, methane,
//   ethane, ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, sulfur dioxide, hydrogen
//   sulfide, hydrogen chloride, ammonia, chlorine, helium, argon; else OW_CANNOT_BE_MET.
// temperature_c: temperature, 0 to 100 degC; butane: 5 to 100 degC (liquid water at atmospheric pressure).
// pressure_kpa: pressure at the place, 0.001 to 120 kPa (where two terms of the virial series are enough).
// Source: virial equation of Kamerlingh Onnes, cut behind the second coefficient.
// Since 0.1.0.
int32_t ow_compressibility(int32_t gas,
                           double temperature_c,
                           double pressure_kpa,
                           double *compressibility,
                           ow_error *error);

// `ow_compressibility` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_compressibility_array(int32_t gas,
                                 size_t count,
                                 const double *temperature_c,
                                 ptrdiff_t temperature_c_stride,
                                 const double *pressure_kpa,
                                 ptrdiff_t pressure_kpa_stride,
                                 double *compressibility,
                                 ptrdiff_t compressibility_stride,
                                 ow_error *error);

// Molar volume of the real gas in dm3/mol.
//
// gas: OW_GAS_... of one of oxygen, nitrogen, air, hydrogen, carbon dioxide, carbon monoxide, methane,
//   ethane, ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, sulfur dioxide, hydrogen
//   sulfide, hydrogen chloride, ammonia, chlorine, helium, argon; else OW_CANNOT_BE_MET.
// temperature_c: temperature, 0 to 100 degC; butane: 5 to 100 degC (liquid water at atmospheric pressure).
// pressure_kpa: pressure at the place, 0.001 to 120 kPa (where two terms of the virial series are enough).
// Source: virial equation of Kamerlingh Onnes, cut behind the second coefficient.
// Since 0.1.0.
int32_t ow_real_molar_volume(int32_t gas,
                             double temperature_c,
                             double pressure_kpa,
                             double *real_molar_volume_dm3_per_mol,
                             ow_error *error);

// `ow_real_molar_volume` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_real_molar_volume_array(int32_t gas,
                                   size_t count,
                                   const double *temperature_c,
                                   ptrdiff_t temperature_c_stride,
                                   const double *pressure_kpa,
                                   ptrdiff_t pressure_kpa_stride,
                                   double *real_molar_volume_dm3_per_mol,
                                   ptrdiff_t real_molar_volume_dm3_per_mol_stride,
                                   ow_error *error);

// Density of the gas in g/dm3.
//
// gas: OW_GAS_... of one of oxygen, nitrogen, air, hydrogen, carbon dioxide, carbon monoxide, methane,
//   ethane, ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, sulfur dioxide, hydrogen
//   sulfide, hydrogen chloride, ammonia, chlorine, helium, argon; else OW_CANNOT_BE_MET.
// temperature_c: temperature, 0 to 100 degC; butane: 5 to 100 degC (liquid water at atmospheric pressure).
// pressure_kpa: pressure at the place, 0.001 to 120 kPa (where two terms of the virial series are enough).
// Source: virial equation of Kamerlingh Onnes, cut behind the second coefficient.
// Since 0.1.0.
int32_t ow_gas_density(int32_t gas,
                       double temperature_c,
                       double pressure_kpa,
                       double *gas_density_g_per_dm3,
                       ow_error *error);

// `ow_gas_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_gas_density_array(int32_t gas,
                             size_t count,
                             const double *temperature_c,
                             ptrdiff_t temperature_c_stride,
                             const double *pressure_kpa,
                             ptrdiff_t pressure_kpa_stride,
                             double *gas_density_g_per_dm3,
                             ptrdiff_t gas_density_g_per_dm3_stride,
                             ow_error *error);

// Solubility of oxygen by Henry's law in mol/(m3 Pa).
//
// gas: OW_GAS_... of one of oxygen, nitrogen, hydrogen, carbon dioxide, carbon monoxide, methane, ethane,
//   ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, nitrogen dioxide, sulfur dioxide,
//   hydrogen sulfide, ammonia, chlorine, ozone, helium, neon, argon, krypton, xenon, sulfur hexafluoride;
//   else OW_CANNOT_BE_MET.
// temperature_c: temperature, 0 to 50 degC; oxygen: 0 to 60 degC; nitrogen: 4.97 to 100 degC; carbon
//   dioxide: 1.04 to 100 degC; carbon monoxide: 5 to 100 degC; methane: 2.31 to 100 degC; ethane: 2.29 to
//   100 degC; helium: 0.06 to 100 degC; neon: 0.05 to 100 degC; xenon: 0.07 to 100 degC; sulfur
//   hexafluoride: 9.99 to 100 degC; hydrogen, hydrogen sulfide: 0 to 100 degC; argon, krypton: 0.04 to 100
//   degC (the range of the measurements).
// Source: Benson, Krause and Peterson, J. Solution Chem. 8 (1979) 655: Henry constant of oxygen (from
//   memory; IAPWS G7-04 within 1.1 %); IAPWS G7-04, Guideline on the Henry's constant and vapor-liquid
//   distribution constant for gases in H2O and D2O, equation 3 and Table 2; Fernandez-Prini, Alvarez and
//   Harvey, J. Phys. Chem. Ref. Data 32 (2003) 903; Sander, Compilation of Henry's law constants (version
//   4.0), Atmos. Chem. Phys. 15 (2015) 4399, rows of the literature reviews.
// Since 0.1.0.
int32_t ow_henry_constant(int32_t gas,
                          double temperature_c,
                          double *henry_constant_oxygen_mol_per_m3_pa,
                          ow_error *error);

// `ow_henry_constant` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_henry_constant_array(int32_t gas,
                                size_t count,
                                const double *temperature_c,
                                ptrdiff_t temperature_c_stride,
                                double *henry_constant_oxygen_mol_per_m3_pa,
                                ptrdiff_t henry_constant_oxygen_mol_per_m3_pa_stride,
                                ow_error *error);

// Volumes of gas in one volume of water (Ostwald).
//
// gas: OW_GAS_... of one of oxygen, nitrogen, hydrogen, carbon dioxide, carbon monoxide, methane, ethane,
//   ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, nitrogen dioxide, sulfur dioxide,
//   hydrogen sulfide, ammonia, chlorine, ozone, helium, neon, argon, krypton, xenon, sulfur hexafluoride;
//   else OW_CANNOT_BE_MET.
// temperature_c: temperature, 0 to 50 degC; oxygen: 0 to 60 degC; nitrogen: 4.97 to 100 degC; carbon
//   dioxide: 1.04 to 100 degC; carbon monoxide: 5 to 100 degC; methane: 2.31 to 100 degC; ethane: 2.29 to
//   100 degC; helium: 0.06 to 100 degC; neon: 0.05 to 100 degC; xenon: 0.07 to 100 degC; sulfur
//   hexafluoride: 9.99 to 100 degC; hydrogen, hydrogen sulfide: 0 to 100 degC; argon, krypton: 0.04 to 100
//   degC (the range of the measurements).
// Source: Henry's law, with the solubility written as a volume of gas.
// Since 0.1.0.
int32_t ow_ostwald_coefficient(int32_t gas,
                               double temperature_c,
                               double *ostwald_coefficient,
                               ow_error *error);

// `ow_ostwald_coefficient` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_ostwald_coefficient_array(int32_t gas,
                                     size_t count,
                                     const double *temperature_c,
                                     ptrdiff_t temperature_c_stride,
                                     double *ostwald_coefficient,
                                     ptrdiff_t ostwald_coefficient_stride,
                                     ow_error *error);

// Gas lost into the water, at most in mmol.
//
// gas: OW_GAS_... of one of oxygen, nitrogen, hydrogen, carbon dioxide, carbon monoxide, methane, ethane,
//   ethene, ethyne, propane, butane, dinitrogen oxide, nitrogen monoxide, nitrogen dioxide, sulfur dioxide,
//   hydrogen sulfide, ammonia, chlorine, ozone, helium, neon, argon, krypton, xenon, sulfur hexafluoride;
//   else OW_CANNOT_BE_MET.
// temperature_c: temperature, 0 to 50 degC; oxygen: 0 to 60 degC; nitrogen: 4.97 to 100 degC; carbon
//   dioxide: 1.04 to 100 degC; carbon monoxide: 5 to 100 degC; methane: 2.31 to 100 degC; ethane: 2.29 to
//   100 degC; helium: 0.06 to 100 degC; neon: 0.05 to 100 degC; xenon: 0.07 to 100 degC; sulfur
//   hexafluoride: 9.99 to 100 degC; hydrogen, hydrogen sulfide: 0 to 100 degC; argon, krypton: 0.04 to 100
//   degC (the range of the measurements).
// partial_pressure_kpa: partial pressure of the gas, 0 to 120 kPa (from none to the gas alone).
// contact_water_cm3: volume of water in contact with the gas, 0 to 100000 cm3 (what school glassware and a
//   room can hold).
// Source: Henry's law, with the solubility written as a volume of gas.
// Since 0.1.0.
int32_t ow_dissolved_amount(int32_t gas,
                            double temperature_c,
                            double partial_pressure_kpa,
                            double contact_water_cm3,
                            double *dissolved_amount_mmol,
                            ow_error *error);

// `ow_dissolved_amount` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_dissolved_amount_array(int32_t gas,
                                  size_t count,
                                  const double *temperature_c,
                                  ptrdiff_t temperature_c_stride,
                                  const double *partial_pressure_kpa,
                                  ptrdiff_t partial_pressure_kpa_stride,
                                  const double *contact_water_cm3,
                                  ptrdiff_t contact_water_cm3_stride,
                                  double *dissolved_amount_mmol,
                                  ptrdiff_t dissolved_amount_mmol_stride,
                                  ow_error *error);

// Vapour pressure of water in kPa.
//
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// Uncertainty of the relation: 0.02 % up to 373 K, from memory.
// Source: IAPWS SR1-86(1992), saturation properties of ordinary water; Wagner and Pruss, J. Phys. Chem. Ref.
//   Data 22 (1993) 783, equation 1.
// Since 0.1.0.
int32_t ow_vapour_pressure(double temperature_c, double *vapour_pressure_kpa, ow_error *error);

// `ow_vapour_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_vapour_pressure_array(size_t count,
                                 const double *temperature_c,
                                 ptrdiff_t temperature_c_stride,
                                 double *vapour_pressure_kpa,
                                 ptrdiff_t vapour_pressure_kpa_stride,
                                 ow_error *error);

// Vapour pressure of water, CIPM in kPa.
//
// temperature_c: temperature, 5 to 30 degC (range of CIPM-2007).
// Source: CIPM-2007: Picard, Davis, Glaeser and Fujii, Metrologia 45 (2008) 149, appendix A1, from memory.
// Since 0.1.0.
int32_t ow_vapour_pressure_cipm_2007(double temperature_c, double *vapour_pressure_cipm_kpa, ow_error *error);

// `ow_vapour_pressure_cipm_2007` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_vapour_pressure_cipm_2007_array(size_t count,
                                           const double *temperature_c,
                                           ptrdiff_t temperature_c_stride,
                                           double *vapour_pressure_cipm_kpa,
                                           ptrdiff_t vapour_pressure_cipm_kpa_stride,
                                           ow_error *error);

// Vapour pressure of water, Hyland-Wexler in kPa.
//
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// Source: Hyland and Wexler, ASHRAE Trans. 89(2A) (1983) 500; ASHRAE Handbook Fundamentals, chapter 1,
//   equation 6.
// Since 0.1.0.
int32_t ow_vapour_pressure_hyland_wexler_1983(double temperature_c,
                                              double *vapour_pressure_hyland_wexler_kpa,
                                              ow_error *error);

// `ow_vapour_pressure_hyland_wexler_1983` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_vapour_pressure_hyland_wexler_1983_array(size_t count,
                                                    const double *temperature_c,
                                                    ptrdiff_t temperature_c_stride,
                                                    double *vapour_pressure_hyland_wexler_kpa,
                                                    ptrdiff_t vapour_pressure_hyland_wexler_kpa_stride,
                                                    ow_error *error);

// Vapour pressure of water, Buck 1981 in kPa.
//
// temperature_c: temperature, 0 to 50 degC (range of Buck's equations).
// Source: Buck, J. Appl. Meteorol. 20 (1981) 1527, from memory.
// Since 0.1.0.
int32_t ow_vapour_pressure_buck_1981(double temperature_c,
                                     double *vapour_pressure_buck_1981_kpa,
                                     ow_error *error);

// `ow_vapour_pressure_buck_1981` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_vapour_pressure_buck_1981_array(size_t count,
                                           const double *temperature_c,
                                           ptrdiff_t temperature_c_stride,
                                           double *vapour_pressure_buck_1981_kpa,
                                           ptrdiff_t vapour_pressure_buck_1981_kpa_stride,
                                           ow_error *error);

// Vapour pressure of water, Buck 1996 in kPa.
//
// temperature_c: temperature, 0 to 50 degC (range of Buck's equations).
// Source: Buck Research CR-1A user manual, appendix 1 (revision of 1996).
// Since 0.1.0.
int32_t ow_vapour_pressure_buck_1996(double temperature_c,
                                     double *vapour_pressure_buck_1996_kpa,
                                     ow_error *error);

// `ow_vapour_pressure_buck_1996` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_vapour_pressure_buck_1996_array(size_t count,
                                           const double *temperature_c,
                                           ptrdiff_t temperature_c_stride,
                                           double *vapour_pressure_buck_1996_kpa,
                                           ptrdiff_t vapour_pressure_buck_1996_kpa_stride,
                                           ow_error *error);

// Vapour pressure of water, Magnus in kPa.
//
// temperature_c: temperature, 0 to 60 degC (range of the Magnus form over water).
// Source: WMO-No. 8, guide to instruments and methods of observation, annex 4.B, from memory.
// Since 0.1.0.
int32_t ow_vapour_pressure_magnus_wmo(double temperature_c,
                                      double *vapour_pressure_magnus_kpa,
                                      ow_error *error);

// `ow_vapour_pressure_magnus_wmo` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_vapour_pressure_magnus_wmo_array(size_t count,
                                            const double *temperature_c,
                                            ptrdiff_t temperature_c_stride,
                                            double *vapour_pressure_magnus_kpa,
                                            ptrdiff_t vapour_pressure_magnus_kpa_stride,
                                            ow_error *error);

// Vapour pressure of water, Antoine in kPa.
//
// temperature_c: temperature, 1 to 100 degC (range of the Antoine equation).
// Source: Antoine equation for water, 1 to 100 degC, constants as commonly quoted.
// Since 0.1.0.
int32_t ow_vapour_pressure_antoine(double temperature_c,
                                   double *vapour_pressure_antoine_kpa,
                                   ow_error *error);

// `ow_vapour_pressure_antoine` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_vapour_pressure_antoine_array(size_t count,
                                         const double *temperature_c,
                                         ptrdiff_t temperature_c_stride,
                                         double *vapour_pressure_antoine_kpa,
                                         ptrdiff_t vapour_pressure_antoine_kpa_stride,
                                         ow_error *error);

// Vapour pressure of water, CRC in kPa.
//
// temperature_c: temperature, 0 to 100 degC (first and last entry of the table).
// Source: CRC Handbook of Chemistry and Physics, 73rd edition, vapor pressure of water.
// Since 0.1.0.
int32_t ow_vapour_pressure_crc_1992(double temperature_c, double *vapour_pressure_crc_kpa, ow_error *error);

// `ow_vapour_pressure_crc_1992` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_vapour_pressure_crc_1992_array(size_t count,
                                          const double *temperature_c,
                                          ptrdiff_t temperature_c_stride,
                                          double *vapour_pressure_crc_kpa,
                                          ptrdiff_t vapour_pressure_crc_kpa_stride,
                                          ow_error *error);

// Vapour pressure of water, OpenStax in kPa.
//
// temperature_c: temperature, 0 to 100 degC (first and last entry of the table).
// Source: OpenStax, Chemistry 2e, appendix E, water vapor pressure.
// Since 0.1.0.
int32_t ow_vapour_pressure_openstax_2019(double temperature_c,
                                         double *vapour_pressure_openstax_kpa,
                                         ow_error *error);

// `ow_vapour_pressure_openstax_2019` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_vapour_pressure_openstax_2019_array(size_t count,
                                               const double *temperature_c,
                                               ptrdiff_t temperature_c_stride,
                                               double *vapour_pressure_openstax_kpa,
                                               ptrdiff_t vapour_pressure_openstax_kpa_stride,
                                               ow_error *error);

// Temperature in degC.
//
// vapour_pressure_kpa: vapour pressure of water, 0.6113 to 101.4 kPa (the vapour pressure of water from 0 to
//   100 degC).
// Source: follows from definitions.
// Since 0.1.0.
int32_t ow_saturation_temperature(double vapour_pressure_kpa, double *temperature_c, ow_error *error);

// `ow_saturation_temperature` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_saturation_temperature_array(size_t count,
                                        const double *vapour_pressure_kpa,
                                        ptrdiff_t vapour_pressure_kpa_stride,
                                        double *temperature_c,
                                        ptrdiff_t temperature_c_stride,
                                        ow_error *error);

// Vapour pressure over ice in Pa.
//
// temperature_c: temperature, -100 to 0 degC (ice at atmospheric pressure, well inside the range of the
//   source).
// Source: IAPWS R14-08(2011), pressure along the melting and sublimation curves, equation 6.
// Since 0.1.0.
int32_t ow_sublimation_pressure(double temperature_c, double *sublimation_pressure_pa, ow_error *error);

// `ow_sublimation_pressure` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_sublimation_pressure_array(size_t count,
                                      const double *temperature_c,
                                      ptrdiff_t temperature_c_stride,
                                      double *sublimation_pressure_pa,
                                      ptrdiff_t sublimation_pressure_pa_stride,
                                      ow_error *error);

// Density of water in g/cm3.
//
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// Uncertainty of the relation: 0.001 %, from memory.
// Source: IAPWS SR6-08(2011), properties of liquid water at 0.1 MPa, equation 4.
// Since 0.1.0.
int32_t ow_water_density(double temperature_c, double *water_density_g_per_cm3, ow_error *error);

// `ow_water_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_water_density_array(size_t count,
                               const double *temperature_c,
                               ptrdiff_t temperature_c_stride,
                               double *water_density_g_per_cm3,
                               ptrdiff_t water_density_g_per_cm3_stride,
                               ow_error *error);

// Density of water, Kell in g/cm3.
//
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// Source: Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16.
// Since 0.1.0.
int32_t ow_water_density_kell_1975(double temperature_c,
                                   double *water_density_kell_g_per_cm3,
                                   ow_error *error);

// `ow_water_density_kell_1975` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_water_density_kell_1975_array(size_t count,
                                         const double *temperature_c,
                                         ptrdiff_t temperature_c_stride,
                                         double *water_density_kell_g_per_cm3,
                                         ptrdiff_t water_density_kell_g_per_cm3_stride,
                                         ow_error *error);

// Density of water at a pressure in g/cm3.
//
// temperature_c: temperature, 0 to 40 degC (range of the recommended table of 2001).
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// Uncertainty of the relation: at most 0.0009 kg/m3 with a coverage factor of 2, from memory.
// Source: Tanaka, Girard, Davis, Peuto and Bignell, Metrologia 38 (2001) 301.
// Since 0.1.0.
int32_t ow_water_density_tanaka(double temperature_c,
                                double pressure_kpa,
                                double *water_density_at_pressure_g_per_cm3,
                                ow_error *error);

// `ow_water_density_tanaka` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_water_density_tanaka_array(size_t count,
                                      const double *temperature_c,
                                      ptrdiff_t temperature_c_stride,
                                      const double *pressure_kpa,
                                      ptrdiff_t pressure_kpa_stride,
                                      double *water_density_at_pressure_g_per_cm3,
                                      ptrdiff_t water_density_at_pressure_g_per_cm3_stride,
                                      ow_error *error);

// Density of water at a pressure in g/cm3.
//
// temperature_c: temperature, 0 to 25 degC (range of the term for dissolved air in the recommended table of
//   2001).
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// Uncertainty of the relation: at most 0.0009 kg/m3 with a coverage factor of 2, from memory.
// Source: Tanaka, Girard, Davis, Peuto and Bignell, Metrologia 38 (2001) 301.
// Since 0.1.0.
int32_t ow_water_density_tanaka_air_saturated(double temperature_c,
                                              double pressure_kpa,
                                              double *water_density_at_pressure_g_per_cm3,
                                              ow_error *error);

// `ow_water_density_tanaka_air_saturated` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_water_density_tanaka_air_saturated_array(size_t count,
                                                    const double *temperature_c,
                                                    ptrdiff_t temperature_c_stride,
                                                    const double *pressure_kpa,
                                                    ptrdiff_t pressure_kpa_stride,
                                                    double *water_density_at_pressure_g_per_cm3,
                                                    ptrdiff_t water_density_at_pressure_g_per_cm3_stride,
                                                    ow_error *error);

// Density of the saturated liquid in g/cm3.
//
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// Source: IAPWS SR1-86(1992), saturation properties of ordinary water, equation 2.
// Since 0.1.0.
int32_t ow_saturated_liquid_density(double temperature_c,
                                    double *saturated_liquid_density_g_per_cm3,
                                    ow_error *error);

// `ow_saturated_liquid_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_saturated_liquid_density_array(size_t count,
                                          const double *temperature_c,
                                          ptrdiff_t temperature_c_stride,
                                          double *saturated_liquid_density_g_per_cm3,
                                          ptrdiff_t saturated_liquid_density_g_per_cm3_stride,
                                          ow_error *error);

// Density of the saturated vapour in kg/m3.
//
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// Source: IAPWS SR1-86(1992), saturation properties of ordinary water, equation 3.
// Since 0.1.0.
int32_t ow_saturated_vapour_density(double temperature_c,
                                    double *saturated_vapour_density_kg_per_m3,
                                    ow_error *error);

// `ow_saturated_vapour_density` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_saturated_vapour_density_array(size_t count,
                                          const double *temperature_c,
                                          ptrdiff_t temperature_c_stride,
                                          double *saturated_vapour_density_kg_per_m3,
                                          ptrdiff_t saturated_vapour_density_kg_per_m3_stride,
                                          ow_error *error);

// Enhancement factor.
//
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// Source: Greenspan, J. Res. Natl. Bur. Stand. 80A (1976) 41.
// Since 0.1.0.
int32_t ow_enhancement_factor_greenspan_1976(double temperature_c,
                                             double pressure_kpa,
                                             double *enhancement,
                                             ow_error *error);

// `ow_enhancement_factor_greenspan_1976` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_enhancement_factor_greenspan_1976_array(size_t count,
                                                   const double *temperature_c,
                                                   ptrdiff_t temperature_c_stride,
                                                   const double *pressure_kpa,
                                                   ptrdiff_t pressure_kpa_stride,
                                                   double *enhancement,
                                                   ptrdiff_t enhancement_stride,
                                                   ow_error *error);

// Enhancement factor, Hardy.
//
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// Source: Hardy, Third International Symposium on Humidity and Moisture, NPL 1998.
// Since 0.1.0.
int32_t ow_enhancement_factor_hardy_1998(double temperature_c,
                                         double pressure_kpa,
                                         double *enhancement_hardy,
                                         ow_error *error);

// `ow_enhancement_factor_hardy_1998` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_enhancement_factor_hardy_1998_array(size_t count,
                                               const double *temperature_c,
                                               ptrdiff_t temperature_c_stride,
                                               const double *pressure_kpa,
                                               ptrdiff_t pressure_kpa_stride,
                                               double *enhancement_hardy,
                                               ptrdiff_t enhancement_hardy_stride,
                                               ow_error *error);

// Enhancement factor, Buck.
//
// temperature_c: temperature, 0 to 50 degC (range of Buck's equations).
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// Source: Buck Research CR-1A user manual, appendix 1 (revision of 1996).
// Since 0.1.0.
int32_t ow_enhancement_factor_buck_1996(double temperature_c,
                                        double pressure_kpa,
                                        double *enhancement_buck,
                                        ow_error *error);

// `ow_enhancement_factor_buck_1996` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_enhancement_factor_buck_1996_array(size_t count,
                                              const double *temperature_c,
                                              ptrdiff_t temperature_c_stride,
                                              const double *pressure_kpa,
                                              ptrdiff_t pressure_kpa_stride,
                                              double *enhancement_buck,
                                              ptrdiff_t enhancement_buck_stride,
                                              ow_error *error);

// Enhancement factor, CIPM.
//
// temperature_c: temperature, 5 to 30 degC (range of CIPM-2007).
// pressure_kpa: pressure at the place, 60 to 110 kPa (range of CIPM-2007).
// Source: CIPM-2007: Picard, Davis, Glaeser and Fujii, Metrologia 45 (2008) 149, appendix A1, from memory.
// Since 0.1.0.
int32_t ow_enhancement_factor_cipm_2007(double temperature_c,
                                        double pressure_kpa,
                                        double *enhancement_cipm,
                                        ow_error *error);

// `ow_enhancement_factor_cipm_2007` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_enhancement_factor_cipm_2007_array(size_t count,
                                              const double *temperature_c,
                                              ptrdiff_t temperature_c_stride,
                                              const double *pressure_kpa,
                                              ptrdiff_t pressure_kpa_stride,
                                              double *enhancement_cipm,
                                              ptrdiff_t enhancement_cipm_stride,
                                              ow_error *error);

// Vapour pressure of water in air in kPa.
//
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// pressure_kpa: pressure at the place, 40 to 120 kPa (pressures from sea level to the highest schools).
// Source: Greenspan, J. Res. Natl. Bur. Stand. 80A (1976) 41.
// Since 0.1.0.
int32_t ow_vapour_pressure_in_air(double temperature_c,
                                  double pressure_kpa,
                                  double *moist_vapour_pressure_kpa,
                                  ow_error *error);

// `ow_vapour_pressure_in_air` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_vapour_pressure_in_air_array(size_t count,
                                        const double *temperature_c,
                                        ptrdiff_t temperature_c_stride,
                                        const double *pressure_kpa,
                                        ptrdiff_t pressure_kpa_stride,
                                        double *moist_vapour_pressure_kpa,
                                        ptrdiff_t moist_vapour_pressure_kpa_stride,
                                        ow_error *error);

// Ionisation of water, -log10 of the molal constant.
//
// temperature_c: temperature, 0 to 100 degC (liquid water at atmospheric pressure).
// Source: IAPWS R11-24, Release on the ionization constant of H2O (edition from memory), after Arcis et al.,
//   J. Phys. Chem. Ref. Data 49 (2020) 033103.
// Since 0.1.0.
int32_t ow_pkw(double temperature_c, double *pkw, ow_error *error);

// `ow_pkw` over `count` rows; a row out of range gives NaN. Strides are in bytes. Since 0.1.0.
int32_t ow_pkw_array(size_t count,
                     const double *temperature_c,
                     ptrdiff_t temperature_c_stride,
                     double *pkw,
                     ptrdiff_t pkw_stride,
                     ow_error *error);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* OVERWATER_H */
