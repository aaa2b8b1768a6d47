//! What the C interface costs over the core: one number, and columns.

use std::hint::black_box;
use std::ptr::null_mut;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use overwater::gas::collected::DryAmount;
use overwater::gas::species::Gas;
use overwater::gas::virial::SecondVirialCoefficient;
use overwater::scalar::Formula;
use overwater::water::vapour::VapourPressure;
use overwater_c::elementwise::collected::{ow_dry_amount, ow_dry_amount_array};
use overwater_c::elementwise::species::ow_second_virial;
use overwater_c::elementwise::vapour::{ow_vapour_pressure, ow_vapour_pressure_array};
use overwater_c::gas::OW_GAS_CARBON_DIOXIDE;
use overwater_c::respond::ow_respond;

const ROWS: usize = 4096;
const EIGHT: isize = size_of::<f64>() as isize;

fn one(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("one number");
    let vapour = VapourPressure { supercooled: false };
    group.bench_function("vapour pressure, core", |bencher| {
        bencher.iter(|| black_box(&vapour).number([black_box(21.0)]));
    });
    // Through a pointer that the compiler does not know, as a call into a shared library is.
    let function = black_box(ow_vapour_pressure as unsafe extern "C" fn(_, _, _) -> _);
    group.bench_function("vapour pressure, C", |bencher| {
        let mut result = 0.0;
        // SAFETY: the result lives.
        bencher.iter(|| unsafe { function(black_box(21.0), black_box(&raw mut result), null_mut()) });
    });
    let dry = DryAmount::default();
    group.bench_function("dry amount, core", |bencher| {
        bencher.iter(|| black_box(&dry).number(black_box([86.5, 21.0, 100.36, 12.0])));
    });
    let function = black_box(ow_dry_amount as unsafe extern "C" fn(_, _, _, _, _, _) -> _);
    group.bench_function("dry amount, C", |bencher| {
        let mut result = 0.0;
        bencher.iter(|| {
            let [volume, temperature, pressure, level] = black_box([86.5, 21.0, 100.36, 12.0]);
            // SAFETY: the result lives.
            unsafe { function(volume, temperature, pressure, level, black_box(&raw mut result), null_mut()) }
        });
    });
    group.bench_function("second virial coefficient, core", |bencher| {
        bencher.iter(|| {
            SecondVirialCoefficient::of(black_box(Gas::CarbonDioxide))
                .and_then(|formula| formula.number([black_box(21.0)]))
        });
    });
    let function = black_box(ow_second_virial as unsafe extern "C" fn(_, _, _, _) -> _);
    group.bench_function("second virial coefficient, C", |bencher| {
        let mut result = 0.0;
        bencher.iter(|| {
            let gas = black_box(OW_GAS_CARBON_DIOXIDE);
            // SAFETY: the result lives.
            unsafe { function(gas, black_box(21.0), black_box(&raw mut result), null_mut()) }
        });
    });
    group.finish();
}

fn columns(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group(format!("columns of {ROWS}"));
    group.throughput(Throughput::Elements(ROWS as u64));
    let temperature: Vec<f64> = (0..ROWS).map(|row| 100.0 * row as f64 / ROWS as f64).collect();
    let volume: Vec<f64> = (0..ROWS).map(|row| 50.0 + row as f64 / 100.0).collect();
    let (pressure, level) = (vec![100.36; ROWS], vec![12.0; ROWS]);
    let mut results = vec![0.0; ROWS];
    group.bench_function("vapour pressure, core", |bencher| {
        let formula = VapourPressure { supercooled: false };
        bencher.iter(|| formula.fill([black_box(&temperature)], black_box(&mut results)));
    });
    group.bench_function("vapour pressure, C", |bencher| {
        bencher.iter(|| {
            let (from, to) = (black_box(&temperature).as_ptr(), black_box(&mut results).as_mut_ptr());
            // SAFETY: both have ROWS rows.
            unsafe { ow_vapour_pressure_array(ROWS, from, EIGHT, to, EIGHT, null_mut()) }
        });
    });
    group.bench_function("dry amount, core", |bencher| {
        let formula = DryAmount::default();
        bencher.iter(|| {
            formula.fill([black_box(&volume), &temperature, &pressure, &level], black_box(&mut results))
        });
    });
    let call = |v: *const f64, t: *const f64, stride: isize, to: *mut f64, to_stride: isize| {
        let (p, l) = (pressure.as_ptr(), level.as_ptr());
        // SAFETY: all have ROWS rows.
        unsafe {
            ow_dry_amount_array(ROWS, v, stride, t, stride, p, EIGHT, l, EIGHT, to, to_stride, null_mut())
        }
    };
    group.bench_function("dry amount, C", |bencher| {
        bencher.iter(|| {
            let to = black_box(&mut results).as_mut_ptr();
            call(black_box(&volume).as_ptr(), temperature.as_ptr(), EIGHT, to, EIGHT)
        });
    });
    let mut structs: Vec<[f64; 3]> = volume.iter().zip(&temperature).map(|(v, t)| [*v, *t, 0.0]).collect();
    group.bench_function("dry amount, C, fields of structs", |bencher| {
        bencher.iter(|| {
            let start: *mut f64 = black_box(&mut structs).as_mut_ptr().cast();
            call(start, start.wrapping_add(1), 3 * EIGHT, start.wrapping_add(2), 3 * EIGHT)
        });
    });
    group.finish();
}

fn request(criterion: &mut Criterion) {
    let request = br#"{"format": 1, "task": "weigh", "request": {"format": 1, "formula": "CuSO4"}}"#;
    let mut buffer = vec![0; 1 << 16];
    let mut needed = 0;
    criterion.bench_function("ow_respond, weigh", |bencher| {
        bencher.iter(|| {
            let (start, length) = (black_box(request).as_ptr().cast(), request.len());
            // SAFETY: the buffer has as many bytes as are said.
            unsafe {
                ow_respond(start, length, buffer.as_mut_ptr(), buffer.len(), &raw mut needed, null_mut())
            }
        });
    });
}

criterion_group!(benches, one, columns, request);
criterion_main!(benches);
