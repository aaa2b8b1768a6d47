//! From a request to the core's lesson, and from the core's plan to an answer.

mod answer;
mod request;

pub(crate) use answer::plan;
pub(crate) use request::lesson;
