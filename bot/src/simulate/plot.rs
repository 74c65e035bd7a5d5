//! A run drawn as SVG: pH, acids, gas, temperature and load, one above the other on one time axis.
//!
//! Takes the rows of a run; gives the text of an SVG file. It never reads or writes one.

use bellyful_core::adm1::scenario::DayRow;
use std::fmt::Write;

const WIDTH: f64 = 900.0;
const LEFT: f64 = 80.0;
const RIGHT: f64 = 20.0;
const TOP: f64 = 64.0;
const PANEL: f64 = 120.0;
const GAP: f64 = 26.0;
/// Told apart without telling colours apart: the second line of a panel is dashed.
const STROKES: [&str; 2] = [r##"stroke="#1f5f8b""##, r##"stroke="#b3541e" stroke-dasharray="5 3""##];

struct Panel {
    title: &'static str,
    lines: Vec<(&'static str, Vec<f64>)>,
    from_zero: bool,
}

/// One SVG. `liquid_m3` turns COD fed into a load.
pub fn svg(name: &str, rows: &[DayRow], liquid_m3: f64) -> String {
    let of = |value: &dyn Fn(&DayRow) -> f64| rows.iter().map(value).collect::<Vec<f64>>();
    let panels = [
        Panel { title: "pH", lines: vec![("", of(&|r| r.ph))], from_zero: false },
        Panel { title: "VFA, kg COD/m³", lines: vec![("", of(&|r| r.vfa_kg_cod_per_m3))], from_zero: true },
        Panel {
            title: "Gas, Nm³/d",
            lines: vec![("CH₄", of(&|r| r.gas.ch4_nm3)), ("CO₂", of(&|r| r.gas.co2_nm3))],
            from_zero: true,
        },
        Panel { title: "Slurry, °C", lines: vec![("", of(&|r| r.celsius))], from_zero: false },
        Panel { title: "Load, kg COD/m³/d", lines: vec![("", of(&|r| r.cod_in_kg / liquid_m3))], from_zero: true },
    ];
    let height = TOP + panels.len() as f64 * (PANEL + GAP) + 24.0;
    let mut svg = format!(
        r##"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {height}" font-family="sans-serif" font-size="12">
<rect width="{WIDTH}" height="{height}" fill="#fff"/>
<text x="{LEFT}" y="24" font-size="15">{}</text>
"##,
        escaped(name)
    );
    let days = rows.len().max(2) as f64;
    let x = |day: f64| LEFT + (WIDTH - LEFT - RIGHT) * day / days;
    for (at, panel) in panels.iter().enumerate() {
        let top = TOP + at as f64 * (PANEL + GAP);
        draw(&mut svg, panel, rows, top, &x);
    }
    let bottom = TOP + panels.len() as f64 * (PANEL + GAP);
    for day in ticks(0.0, days) {
        let _ = writeln!(svg, r#"<text x="{:.1}" y="{bottom:.1}" text-anchor="middle">{day}</text>"#, x(day));
    }
    let _ = writeln!(svg, r#"<text x="{:.1}" y="{:.1}" text-anchor="end">day</text>"#, WIDTH - RIGHT, bottom + 16.0);
    svg + "</svg>\n"
}

fn draw(svg: &mut String, panel: &Panel, rows: &[DayRow], top: f64, x: &dyn Fn(f64) -> f64) {
    let all = || panel.lines.iter().flat_map(|(_, line)| line.iter().copied());
    let least = if panel.from_zero { all().fold(0.0, f64::min) } else { all().fold(f64::INFINITY, f64::min) };
    let most = all().fold(f64::NEG_INFINITY, f64::max);
    let room = if most > least { 0.05 * (most - least) } else { 1.0 };
    let (low, high) = (if least == 0.0 { 0.0 } else { least - room }, most + room);
    let y = |value: f64| top + PANEL * (1.0 - (value - low) / (high - low));
    let (left, right) = (LEFT, WIDTH - RIGHT);
    for tick in ticks(low, high) {
        let at = y(tick);
        let _ = writeln!(svg, r##"<path d="M{left} {at:.1}H{right}" stroke="#ddd"/>"##);
        let _ = writeln!(svg, r#"<text x="{:.1}" y="{:.1}" text-anchor="end">{tick}</text>"#, left - 6.0, at + 4.0);
    }
    let _ = writeln!(svg, r##"<path d="M{left} {top}V{:.1}H{right}" fill="none" stroke="#555"/>"##, top + PANEL);
    let _ = writeln!(svg, r#"<text x="{left}" y="{:.1}" font-weight="bold">{}</text>"#, top - 6.0, panel.title);
    for (at, ((label, line), stroke)) in panel.lines.iter().zip(STROKES).enumerate() {
        let points: Vec<String> =
            rows.iter().zip(line).map(|(row, &value)| format!("{:.1},{:.1}", x(row.day as f64), y(value))).collect();
        let _ = writeln!(svg, r#"<polyline points="{}" fill="none" stroke-width="1.5" {stroke}/>"#, points.join(" "));
        if !label.is_empty() {
            let (from, to) = (right - 120.0 + 60.0 * at as f64, top - 10.0);
            let _ = writeln!(svg, r#"<path d="M{from} {to}h20" stroke-width="1.5" {stroke}/>"#);
            let _ = writeln!(svg, r#"<text x="{:.1}" y="{:.1}">{label}</text>"#, from + 24.0, to + 4.0);
        }
    }
}

/// A handful of round values within a range.
fn ticks(low: f64, high: f64) -> Vec<f64> {
    let raw = (high - low) / 5.0;
    let power = 10f64.powi(raw.log10().floor() as i32);
    let step = power * [1.0, 2.0, 5.0, 10.0].into_iter().find(|round| round * power >= raw).unwrap_or(10.0);
    let decimals = (-step.log10().floor()).max(0.0) as i32;
    let tidy = |value: f64| (value * 10f64.powi(decimals)).round() / 10f64.powi(decimals);
    let first = (low / step).ceil() as i64;
    (first..).map(|i| tidy(i as f64 * step)).take_while(|&tick| tick <= high + 1e-9 * step).collect()
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}
