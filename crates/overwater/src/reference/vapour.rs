//! Vapour pressure of water: the simple equations and the printed tables that textbooks use.

use super::sources;
use crate::scalar::Table;
use crate::units::{DEGREE_CELSIUS, KILOPASCAL, TORR};

/// Coefficients C8 to C13 of Hyland and Wexler, ASHRAE Trans. 89(2A) (1983) 500, over liquid water (Pa and K). Range of
/// the source: 0 to 200 degC.
pub static HYLAND_WEXLER_1983: [f64; 6] =
    [-5.800_220_6e3, 1.391_499_3, -4.864_023_9e-2, 4.176_476_8e-5, -1.445_209_3e-8, 6.545_967_3];

/// Coefficients a (Pa), b and c (degC) of Buck, J. Appl. Meteorol. 20 (1981) 1527, equation e(w1), from memory. Range:
/// 0 to 50 degC, from memory.
pub static BUCK_1981: [f64; 3] = [611.21, 17.502, 240.97];

/// Coefficients a (Pa), b, c and d (degC) of the revision of 1996: Buck Research CR-1A user manual, appendix 1. Range:
/// 0 to 50 degC, from memory.
pub static BUCK_1996: [f64; 4] = [611.21, 18.678, 257.14, 234.5];

/// Coefficients a (Pa), b and c (degC) of the Magnus form in WMO-No. 8, annex 4.B, from memory. Range over water: -45
/// to 60 degC, from memory.
pub static MAGNUS_WMO_2008: [f64; 3] = [611.2, 17.62, 243.12];

/// Coefficients A, B and C (log10, mmHg, degC) of the Antoine equation as it is quoted for 1 to 100 degC.
pub static ANTOINE: [f64; 3] = [8.071_31, 1730.63, 233.426];

/// Coefficients A to D (Pa and K) of CIPM-81/91 and CIPM-2007: Picard et al., Metrologia 45 (2008) 149, equation A1.1,
/// from memory, confirmed within 0.003 % of IAPWS from 0 to 30 degC.
pub static CIPM_2007: [f64; 4] = [1.237_884_7e-5, -1.912_131_6e-2, 33.937_110_47, -6.343_164_5e3];

/// Temperature (K) and pressure (Pa) of the triple point: IAPWS R14-08(2011).
pub static TRIPLE_POINT_2008: [f64; 2] = [273.16, 611.657];
/// Coefficients a1 to a3 and exponents b1 to b3 of the sublimation pressure of ice Ih: IAPWS R14-08(2011), equation 6.
/// Range of the source: 50 to 273.16 K.
pub static SUBLIMATION_2008: [(f64, f64); 3] = [
    (-0.212_144_006e2, 0.333_333_333e-2),
    (0.273_203_819e2, 0.120_666_667e1),
    (-0.610_598_130e1, 0.170_333_333e1),
];

/// CRC Handbook of Chemistry and Physics, 73rd edition (1992): vapour pressure of water in kPa at each degree. Its
/// temperatures are on the scale of 1968: the table lies up to 0.1 % below IAPWS at the same printed temperature.
///
/// 38 degC is printed 6.6398 in the copy that was read, which no smooth curve passes; the neighbours and IAPWS on the
/// old scale give 6.6297, so one digit is wrong and 6.6298 is meant. The entry at 100 degC is from memory.
pub static CRC_1992: Table = Table {
    entries: &[
        (0.0, 0.611_29),
        (1.0, 0.657_16),
        (2.0, 0.706_05),
        (3.0, 0.758_13),
        (4.0, 0.813_59),
        (5.0, 0.8726),
        (6.0, 0.935_37),
        (7.0, 1.0021),
        (8.0, 1.073),
        (9.0, 1.1482),
        (10.0, 1.2281),
        (11.0, 1.3129),
        (12.0, 1.4027),
        (13.0, 1.4979),
        (14.0, 1.5988),
        (15.0, 1.7056),
        (16.0, 1.8185),
        (17.0, 1.938),
        (18.0, 2.0644),
        (19.0, 2.1978),
        (20.0, 2.3388),
        (21.0, 2.4877),
        (22.0, 2.6447),
        (23.0, 2.8104),
        (24.0, 2.985),
        (25.0, 3.169),
        (26.0, 3.3629),
        (27.0, 3.567),
        (28.0, 3.7818),
        (29.0, 4.0078),
        (30.0, 4.2455),
        (31.0, 4.4953),
        (32.0, 4.7578),
        (33.0, 5.0335),
        (34.0, 5.3229),
        (35.0, 5.6267),
        (36.0, 5.9453),
        (37.0, 6.2795),
        (38.0, 6.6298),
        (39.0, 6.9969),
        (40.0, 7.3814),
        (41.0, 7.784),
        (42.0, 8.2054),
        (43.0, 8.6463),
        (44.0, 9.1075),
        (45.0, 9.5895),
        (46.0, 10.094),
        (47.0, 10.62),
        (48.0, 11.171),
        (49.0, 11.745),
        (50.0, 12.344),
        (51.0, 12.97),
        (52.0, 13.623),
        (53.0, 14.303),
        (54.0, 15.012),
        (55.0, 15.752),
        (56.0, 16.522),
        (57.0, 17.324),
        (58.0, 18.159),
        (59.0, 19.028),
        (60.0, 19.932),
        (61.0, 20.873),
        (62.0, 21.851),
        (63.0, 22.868),
        (64.0, 23.925),
        (65.0, 25.022),
        (66.0, 26.163),
        (67.0, 27.347),
        (68.0, 28.576),
        (69.0, 29.852),
        (70.0, 31.176),
        (71.0, 32.549),
        (72.0, 33.972),
        (73.0, 35.448),
        (74.0, 36.978),
        (75.0, 38.563),
        (76.0, 40.205),
        (77.0, 41.905),
        (78.0, 43.665),
        (79.0, 45.487),
        (80.0, 47.373),
        (81.0, 49.324),
        (82.0, 51.342),
        (83.0, 53.428),
        (84.0, 55.585),
        (85.0, 57.815),
        (86.0, 60.119),
        (87.0, 62.499),
        (88.0, 64.958),
        (89.0, 67.496),
        (90.0, 70.117),
        (91.0, 72.823),
        (92.0, 75.614),
        (93.0, 78.494),
        (94.0, 81.465),
        (95.0, 84.529),
        (96.0, 87.688),
        (97.0, 90.945),
        (98.0, 94.301),
        (99.0, 97.759),
        (100.0, 101.32),
    ],
    argument: &DEGREE_CELSIUS,
    value: &KILOPASCAL,
    source: &sources::CRC_1992,
};

/// OpenStax, Chemistry 2e (2019), appendix E: vapour pressure of water in torr.
pub static OPENSTAX_2019: Table = Table {
    entries: &[
        (0.0, 4.6),
        (4.0, 6.1),
        (10.0, 9.2),
        (15.0, 12.8),
        (20.0, 17.5),
        (22.0, 19.8),
        (25.0, 23.8),
        (30.0, 31.8),
        (35.0, 42.2),
        (40.0, 55.3),
        (45.0, 71.9),
        (50.0, 92.5),
        (55.0, 118.0),
        (60.0, 149.4),
        (65.0, 187.5),
        (70.0, 233.7),
        (75.0, 289.1),
        (80.0, 355.1),
        (85.0, 433.6),
        (90.0, 525.8),
        (95.0, 633.9),
        (100.0, 760.0),
    ],
    argument: &DEGREE_CELSIUS,
    value: &TORR,
    source: &sources::OPENSTAX_2019,
};
