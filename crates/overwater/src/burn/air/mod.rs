//! What a burn puts into the room's air, and whether that stays within the limits for people at work.

mod limits;
mod release;
mod room;

pub use limits::{Check, Unit};
pub use release::{Release, RoomAir, Source, release};
pub use room::{Room, RoomConcentration, concentration, falling, mean_falling, time_to_fall};
