//! From rows to runs to what they say together.

use std::io::Read;

use overwater::readings::series::{Finding, Names};
use overwater::{Code, Error};

use super::across::{self, Compared, different};
use super::answer::{BadRunAnswer, EstimateAnswer, RateAnswer};
use super::columns::Kind;
use super::one::{Worked, work_out};
use super::prepared::{Prepared, prepare};
use super::request::{ArrheniusFromRequest, RateFromRequest, RateRequest};
use super::rows::{Rows, of_request, of_table};
use super::runs::{kelvin, runs};
use crate::lines::per;
use crate::table::BadCell;
use crate::{FORMAT, Refusal};

/// Works out rows that are at hand. Rows and runs without a result are listed in the answer, and lose nothing of the
/// others.
///
/// ```
/// use overwater_exchange::{rate::rate, rate_from_json};
/// // OpenStax, Chemistry 2e, section 12.4: peroxide at 40 degC, read every 6 hours; k = 0.116 per hour.
/// let rows: Vec<String> = (0..5)
///     .map(|i| format!(r#"{{"time_h": {}, "concentration_mol_per_dm3": {}}}"#, 6 * i, 1.0 / f64::from(1 << i)))
///     .collect();
/// let answer = rate(&rate_from_json(&format!(r#"{{"format": 1, "rows": [{}]}}"#, rows.join(",")))?)?;
/// let curve = answer.runs[0].curve.as_ref().unwrap();
/// assert_eq!(format!("{:.3} {}", curve.rate_constant.value, curve.rate_constant.unit), "0.116 1/h");
/// # Ok::<(), Box<overwater_exchange::Refusal>>(())
/// ```
///
/// # Errors
/// Everything in the request beside the rows that is refused, and `missing` where there is no row.
pub fn rate(request: &RateRequest) -> Result<RateAnswer, Box<Refusal>> {
    answer(request, of_request(request)?)
}

/// Works out a table as it is read. Everything else as for [`rate`].
///
/// # Errors
/// As for [`rate`], and the header of the table; `too_large` as soon as it has more rows than
/// [`MOST_ROWS`](overwater::readings::series::MOST_ROWS).
pub fn rate_table(request: &RateRequest, source: impl Read) -> Result<RateAnswer, Box<Refusal>> {
    answer(request, of_table(request, source)?)
}

fn answer(request: &RateRequest, mut rows: Rows) -> Result<RateAnswer, Box<Refusal>> {
    if rows.read == 0 {
        return Err(Error::new(Code::Missing, "rows").advice("there is no row of readings").into());
    }
    let prepared = prepare(request, &rows)?;
    let mut answer = RateAnswer {
        format: FORMAT,
        library_version: env!("CARGO_PKG_VERSION").to_owned(),
        title: request.title.clone(),
        reading: prepared.followed.stem().to_owned(),
        notes: Vec::new(),
        data_figures: rows.figures(&[Kind::Time, prepared.followed, Kind::InitialConcentration]),
        rows_read: rows.read,
        rows_good: 0,
        runs: Vec::new(),
        order: None,
        saturation: None,
        arrhenius: None,
        warnings: Vec::new(),
        bad_rows: Vec::new(),
        bad_runs: Vec::new(),
    };
    if Kind::RATES.contains(&prepared.followed) {
        only_positive(&prepared, &mut rows);
        known_rates(&prepared, &rows, &mut answer)?;
    } else {
        followed(&prepared, &mut rows, &mut answer)?;
    }
    answer.rows_good = rows.read - rows.bad_count;
    answer.notes.splice(0..0, rows.notes);
    rows.bad.sort_by_key(|bad| bad.row);
    answer.bad_rows = rows.bad;
    Ok(answer)
}

/// A table of curves.
fn followed(prepared: &Prepared, rows: &mut Rows, answer: &mut RateAnswer) -> Result<(), Error> {
    let mut worked = Vec::new();
    for run in runs(rows, prepared.followed, prepared.may_go_back) {
        match work_out(prepared, rows, &run) {
            Ok(one) => worked.push(one),
            Err(error) if error.parameter.starts_with("bootstrap.") => return Err(error),
            Err(error) => answer.bad_runs.push(BadRunAnswer {
                run: run.label.clone(),
                code: error.code.name().to_owned(),
                message: Error {
                    parameter: format!("run {}: {}", run.label, error.parameter).into(),
                    ..error
                }
                .to_string(),
            }),
        }
    }
    if prepared.gas.is_some() && worked.iter().any(|one| one.answer.gas.is_none()) {
        answer.notes.push(
            "rates are not given as amounts: that needs pressure_kpa and gas_temperature_c (for a loss of mass, temperature_c)"
                .to_owned(),
        );
    }
    if prepared.gas.is_none() && matches!(prepared.followed, Kind::Mass | Kind::MassLoss) {
        answer.notes.push(
            "the loss of mass is gas and the vapour that it carries off; gas, temperature_c and pressure_kpa tell them apart"
                .to_owned(),
        );
    }
    if worked.len() > 1 {
        together(prepared, rows, &worked, answer)?;
    }
    answer.runs = worked.into_iter().map(|one| one.answer).collect();
    Ok(())
}

/// The rate by which runs are compared.
fn rate_of<'a>(one: &'a Worked, way: &str) -> Option<&'a EstimateAnswer> {
    one.answer.initial_rates.iter().find(|rate| rate.way == way)
}

fn together(
    prepared: &Prepared,
    rows: &Rows,
    worked: &[Worked],
    answer: &mut RateAnswer,
) -> Result<(), Error> {
    let concentrations: Vec<f64> = worked.iter().filter_map(|one| one.concentration).collect();
    let temperatures: Vec<f64> = worked.iter().filter_map(|one| one.answer.temperature_k).collect();
    let by_concentration = concentrations.len() == worked.len() && different(&concentrations) > 1;
    let by_temperature = temperatures.len() == worked.len() && different(&temperatures) > 1;
    if by_concentration && by_temperature {
        answer.warnings.push(
            "temperature and concentration both change from run to run: neither an order nor an activation energy is \
             worked out; put runs that differ in one thing only into one table"
                .to_owned(),
        );
        return Ok(());
    }
    let whole = worked.iter().all(|one| rate_of(one, "whole_curve").is_some());
    let way = match prepared.rate_from {
        Some(RateFromRequest::Tangent) => "tangent",
        Some(RateFromRequest::FirstTwo) => "first_two",
        Some(RateFromRequest::WholeCurve) if !whole => {
            return Err(Error::new(Code::CannotBeMet, "rate_from")
                .value("whole_curve")
                .advice("not every run has a fitted curve: take \"tangent\""));
        }
        Some(RateFromRequest::WholeCurve) => "whole_curve",
        None if whole => "whole_curve",
        None => "tangent",
    };
    let labels = || worked.iter().map(|one| one.answer.run.as_str()).collect::<Vec<_>>();
    let rates: Vec<&EstimateAnswer> = worked.iter().filter_map(|one| rate_of(one, way)).collect();
    let rate_unit = per(rows.unit(prepared.followed).text, rows.unit(Kind::Time).text);
    if by_concentration {
        let compared = Compared {
            names: Names { x: rows.name(Kind::InitialConcentration), y: "rate" },
            runs: labels(),
            x: concentrations,
            y: rates.iter().map(|rate| rate.rate.value).collect(),
            errors: rates.iter().map(|rate| rate.rate.standard_error).collect(),
            x_unit: rows.unit(Kind::InitialConcentration).text,
            y_unit: &rate_unit,
            from: way.to_owned(),
        };
        by_order(prepared, &compared, answer);
    } else if by_temperature {
        let constants = worked.iter().all(|one| one.rate_constant.is_some());
        let from_constants = match prepared.arrhenius_from {
            Some(ArrheniusFromRequest::InitialRate) => false,
            Some(ArrheniusFromRequest::RateConstant) if !constants => {
                return Err(Error::new(Code::CannotBeMet, "arrhenius_from")
                    .value("rate_constant")
                    .advice("not every run has a fitted curve: take \"initial_rate\""));
            }
            Some(ArrheniusFromRequest::RateConstant) => true,
            None => constants,
        };
        let per_time = per("", rows.unit(Kind::Time).text);
        let (y, errors): (Vec<f64>, Vec<Option<f64>>) = if from_constants {
            worked.iter().filter_map(|one| one.rate_constant).unzip()
        } else {
            rates.iter().map(|rate| (rate.rate.value, rate.rate.standard_error)).unzip()
        };
        let compared = Compared {
            names: Names { x: "temperature_k", y: if from_constants { "rate_constant" } else { "rate" } },
            runs: labels(),
            x: temperatures,
            y,
            errors,
            x_unit: "K",
            y_unit: if from_constants { &per_time } else { &rate_unit },
            from: if from_constants { "rate_constant".to_owned() } else { way.to_owned() },
        };
        match across::activation(&compared, prepared) {
            Ok(found) => answer.arrhenius = Some(found),
            Err(error) => answer.warnings.push(format!("no activation energy: {error}")),
        }
    }
    Ok(())
}

fn by_order(prepared: &Prepared, compared: &Compared<'_>, answer: &mut RateAnswer) {
    match across::order(compared) {
        Ok(found) => answer.order = Some(found),
        Err(error) => answer.warnings.push(format!("no order: {error}")),
    }
    if prepared.michaelis_menten {
        match across::enzyme(compared, prepared) {
            Ok(found) => answer.saturation = Some(found),
            Err(error) => answer.warnings.push(format!("no greatest rate: {error}")),
        }
    }
}

/// Logarithms and reciprocals are taken of every number in a table of rates.
fn only_positive(prepared: &Prepared, rows: &mut Rows) {
    let all = std::mem::take(&mut rows.rows);
    for row in all {
        let wrong = [prepared.followed, Kind::InitialConcentration].into_iter().find_map(|kind| {
            let value = row.get(kind).filter(|value| *value <= 0.0)?;
            let names = Names { x: "", y: rows.name(kind) };
            let error = Finding::NotPositive { row: 0, column: names.y, value }.error(names);
            Some(BadCell { column: names.y.to_owned(), error })
        });
        match wrong {
            Some(bad) => rows.refuse(row.number, row.line, bad),
            None => rows.rows.push(row),
        }
    }
}

/// A table of rates that are known already.
fn known_rates(prepared: &Prepared, rows: &Rows, answer: &mut RateAnswer) -> Result<(), Error> {
    let kind = prepared.followed;
    let (concentration, temperature) = (rows.has(Kind::InitialConcentration), rows.has(Kind::Temperature));
    let labels: Vec<String> = rows
        .rows
        .iter()
        .map(|row| row.run.clone().filter(|run| !run.is_empty()).unwrap_or_else(|| row.number.to_string()))
        .collect();
    let unit = rows.unit(kind).text;
    let (y_unit, from) = match kind {
        Kind::TimeTaken => (per("", unit), "time_taken"),
        Kind::RateConstant => (unit.to_owned(), "rate_constant"),
        _ => (unit.to_owned(), "given"),
    };
    if kind == Kind::TimeTaken {
        answer.notes.push(
            "rates are 1/time: a mean up to the fixed point, below the initial rate by 5 % where it is a tenth of the whole, \
             10 % at a fifth, 28 % at a half (first order)"
                .to_owned(),
        );
    }
    let y = rows.rows.iter().filter_map(|row| row.get(kind));
    let y: Vec<f64> = if kind == Kind::TimeTaken { y.map(|time| 1.0 / time).collect() } else { y.collect() };
    let of = |kind: Kind| rows.rows.iter().filter_map(|row| row.get(kind)).collect::<Vec<f64>>();
    let compared = |x: Vec<f64>, x_name: &'static str, x_unit: &'static str| Compared {
        names: Names { x: x_name, y: rows.name(kind) },
        runs: labels.iter().map(String::as_str).collect(),
        x,
        y: y.clone(),
        errors: vec![None; y.len()],
        x_unit,
        y_unit: &y_unit,
        from: from.to_owned(),
    };
    let (concentrations, temperatures) = (of(Kind::InitialConcentration), of(Kind::Temperature));
    match (concentration, temperature) {
        (true, true) if different(&concentrations) > 1 && different(&temperatures) > 1 => {
            Err(Error::new(Code::Contradiction, "columns")
                .value("temperature and concentration both change")
                .advice("put rates that differ in one thing only into one table"))
        }
        (true, true) if different(&concentrations) > 1 => {
            known_order(prepared, rows, &compared, concentrations, answer)
        }
        (true, false) => known_order(prepared, rows, &compared, concentrations, answer),
        (_, true) => {
            let kelvins = rows.rows.iter().filter_map(|row| kelvin(rows, row, Kind::Temperature)).collect();
            let compared = compared(kelvins, "temperature_k", "K");
            answer.arrhenius = Some(across::activation(&compared, prepared)?);
            Ok(())
        }
        (false, false) => Err(Error::new(Code::Missing, "columns")
            .allowed("initial_concentration_mol_per_dm3 or temperature_c")
            .advice("say what each rate was measured at")),
    }
}

fn known_order<'a>(
    prepared: &Prepared,
    rows: &Rows,
    compared: &impl Fn(Vec<f64>, &'static str, &'static str) -> Compared<'a>,
    concentrations: Vec<f64>,
    answer: &mut RateAnswer,
) -> Result<(), Error> {
    let kind = Kind::InitialConcentration;
    let compared = compared(concentrations, rows.name(kind), rows.unit(kind).text);
    answer.order = Some(across::order(&compared)?);
    if prepared.michaelis_menten {
        answer.saturation = Some(across::enzyme(&compared, prepared)?);
    }
    Ok(())
}
