//! Notions: what a word of any language can stand for. The word lists of `lang/xx/words.toml` name them by id.
//!
//! Takes nothing, gives the types that the lexicon hands to the rules. No word of any language stands here.

use super::reading::Control;
use bellyful_core::fact::{GasLevel, Measure, Sign};
use bellyful_core::feeds::Feed;
use bellyful_core::ids;

ids!(/// A notion that rules combine; the id is the key under `[cues]` in a language's word list.
    Cue {
    // Joints of a sentence
    And = "and", Or = "or", But = "but", Of = "of", In = "in", With = "with", To = "to", Is = "is", Was = "was",
    Not = "not", Without = "without", Nothing = "nothing", Only = "only", About = "about", Some = "some", TooMuch = "too_much", My = "my",
    Holds = "holds", Modifier = "modifier", Times = "times", Minus = "minus", At = "at", Sized = "sized",
    Now = "now", Still = "still", Again = "again", Almost = "almost", DontKnow = "dont_know", Forgot = "forgot", Point = "point", Bang = "bang",
    // Time
    Ago = "ago", Since = "since", Night = "night", Colon = "colon", Between = "between", Ordinal = "ordinal", Noon = "noon", Habit = "habit", Will = "will", If = "if",
    VagueTime = "vague_time", PastDay = "vague_day", Morning = "part_of_day",
    // Asking
    HowMuch = "how_much", HowLong = "how_long", How = "how", What = "what", Why = "why", CanI = "can_i", Status = "status",
    Person = "person", History = "history", Ration = "ration", AskGas = "ask_gas", AskWater = "ask_water",
    StartUp = "start_up", AskDigestate = "ask_digestate", Good4 = "is_allowed",
    // Shares and sameness
    Same = "same", Double = "double", Triple = "triple", HalfShare = "half_share", Rest = "the_rest", AsUsual = "as_usual",
    // Mending
    Meant = "meant", Sorry = "sorry", Thing = "thing",
    // Doings
    Put = "put", PutNot = "put_not", PutPlan = "put_plan", Cook = "cook", CookNot = "cook_not", Lasted = "lasted",
    Remove = "remove", Owns = "owns", Fell = "fell", Start = "start", Aged = "aged", NewTank = "new_tank", Seed = "seed", LiveIn = "live_in", LiveAfter = "live_after",
    Painted = "painted", Mend = "mend",
    // Things
    Tank = "tank", GasBag = "gas_bag", Bag = "bag", Gas = "gas", Flame = "flame", FireWord = "fire_word", Stove = "stove",
    Pipe = "pipe", Inlet = "inlet", Outlet = "outlet", Slurry = "slurry", Level = "level", Indoors = "indoors",
    Gauge = "gauge", Temp = "temp", TempLetter = "temp_letter", Outside = "outside", Weather = "weather", Ph = "ph", People = "people",
    PeopleAre = "people_are", Water = "water", Smell = "smell", Fertilizer = "fertilizer", Crops = "crops",
    Household = "household", NumberSign = "number_sign", ForWord = "for_word", BurnThing = "burn_thing", Region = "region",
    WeAre = "we_are", Folk = "folk", Enters = "enters", Elsewhere = "elsewhere", NotOurs = "not_ours",
    // Qualities
    Sour = "sour", RottenEgg = "rotten_egg", Stink = "stink", Blocked = "blocked", Leak = "leak", Hiss = "hiss",
    Torn = "torn", Loose = "loose", Smoke = "smoke", Cracked = "cracked", Thick = "thick", Watery = "watery", Green = "green", Yellow = "yellow",
    Blue = "blue", Weak = "weak", NoLight = "will_not_light", GoesOut = "goes_out", Lights = "lights",
    Drop = "drop", ComesOut = "comes_out", GoesIn = "goes_in", Burning = "burning", Escape = "escape", Wrong = "wrong",
    Odd = "odd", HalfLevel = "half", Over = "over",
    Black = "black", White = "white", Insulated = "insulated", Greenhouse = "greenhouse", Heated = "heated",
    Buried = "buried",
    // Parts of foods
    Peel = "peel", Dung = "dung", Cow = "cow", Pig = "pig", Chicken = "chicken", Goat = "goat", Horse = "horse",
    Human = "human", Boil = "boil", Leftover = "leftover", Citrus = "citrus", Melon = "melon", Soda = "soda",
    Lime = "lime", Running = "running",
    // The talk itself
    LanguageWord = "language", Chatter = "chatter", Other = "other", Yes = "yes_word", No = "no_word",
    OutletUsual = "outlet_smell", Hypothetical = "hypothetical",
    Erase = "erase", OwnData = "own_data", Send = "send", Texts = "texts", Reminders = "reminders",
    // Danger told sideways: who lies there and does not wake, what befalls the body, what bursts and climbs
    Drops = "drops", Stirs = "stirs", Lifeless = "lifeless", Body = "body", Harm = "harm", Drinks = "drinks",
    Blast = "blast", Heat = "heat", Rises = "rises", Filled = "filled", ToOthers = "to_others", Ails = "ails", Ill = "ill",
    // Figures of speech: what burns or aches only in words
    Figure = "figure", Burden = "burden", Ache = "ache", Laugh = "laugh", InWords = "in_words", Like = "like", Counted = "counted", ThatOne = "that_one", Latest = "latest", Bubbles = "bubbles", Each = "each", AsksFirst = "asks_first", TurnOff = "turn_off", Feeds = "feeds", Percent = "percent", ISaid = "i_said", Myself = "myself",
});

/// A set of cues.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Cues([u64; 4]);

impl Cues {
    pub const fn of(cues: &[Cue]) -> Cues {
        let mut set = Cues([0; 4]);
        let mut i = 0;
        while i < cues.len() {
            let bit = cues[i] as usize;
            set.0[bit / 64] |= 1 << (bit % 64);
            i += 1;
        }
        set
    }
    /// The set with one cue more.
    pub const fn and(mut self, cue: Cue) -> Cues {
        self.0[cue as usize / 64] |= 1 << (cue as usize % 64);
        self
    }
    pub fn insert(&mut self, cue: Cue) {
        self.0[cue as usize / 64] |= 1 << (cue as usize % 64);
    }
    pub fn remove(&mut self, cue: Cue) {
        self.0[cue as usize / 64] &= !(1 << (cue as usize % 64));
    }
    pub fn remove_all(&mut self, others: &Cues) {
        for (mine, theirs) in self.0.iter_mut().zip(others.0) {
            *mine &= !theirs;
        }
    }
    pub const fn has(&self, cue: Cue) -> bool {
        self.0[cue as usize / 64] & (1 << (cue as usize % 64)) != 0
    }
    /// Whether any of `others` is in the set.
    pub const fn any(&self, others: &Cues) -> bool {
        self.0[0] & others.0[0] != 0
            || self.0[1] & others.0[1] != 0
            || self.0[2] & others.0[2] != 0
            || self.0[3] & others.0[3] != 0
    }
    /// Whether nothing beside `others` is in the set.
    pub const fn only(&self, others: &Cues) -> bool {
        self.0[0] & !others.0[0] == 0
            && self.0[1] & !others.0[1] == 0
            && self.0[2] & !others.0[2] == 0
            && self.0[3] & !others.0[3] == 0
    }
    pub fn join(&mut self, others: &Cues) {
        for (mine, theirs) in self.0.iter_mut().zip(others.0) {
            *mine |= theirs;
        }
    }
    pub fn is_empty(&self) -> bool {
        self.0 == [0; 4]
    }
}

/// Beasts that dung comes from.
pub const BEASTS: Cues = Cues::of(&[Cue::Cow, Cue::Pig, Cue::Chicken, Cue::Goat, Cue::Horse]);
/// Words of daily life, but where they tell of a peril together with others.
pub const OF_PERIL: Cues = Cues::of(&[Cue::Body, Cue::Harm, Cue::Stirs, Cue::Drinks, Cue::Rises, Cue::Filled]);

/// Words that speak to the bot, and of daily life elsewhere.
pub const OF_ORDERS: Cues = Cues::of(&[Cue::Erase, Cue::OwnData, Cue::Send, Cue::Texts, Cue::Reminders]);

const _: () = assert!(Cue::ALL.len() <= 256);

/// A unit as a word names it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum UnitWord {
    /// Kilograms in one.
    Mass(f64),
    /// Litres in one.
    Volume(f64),
    Of(Measure),
    /// Minutes in one.
    Time(f64),
    /// Days in one.
    Days(f64),
    /// Centimetres of water in one.
    Pressure(f64),
    Celsius,
    Fahrenheit,
    Degree,
    /// Known, but of no fixed size: the bot must ask.
    Unclear,
}

/// The keys under `[units]` and what they are worth.
/// Source: NIST SP 811 (2008) appendix B for pound, ounce, gallon; 1 mbar = 1.01972 and 1 psi = 70.307 cm of water at 4 °C, same place.
pub const UNITS: [(&str, UnitWord); 28] = [
    ("kg", UnitWord::Mass(1.0)),
    ("g", UnitWord::Mass(0.001)),
    ("lb", UnitWord::Mass(0.453_592_37)),
    ("oz", UnitWord::Mass(0.028_349_523)),
    ("tonne", UnitWord::Mass(1000.0)),
    ("half_kg", UnitWord::Mass(0.5)),
    ("quarter_kg", UnitWord::Mass(0.25)),
    ("l", UnitWord::Volume(1.0)),
    ("ml", UnitWord::Volume(0.001)),
    ("cl", UnitWord::Volume(0.01)),
    ("m3", UnitWord::Volume(1000.0)),
    ("gallon", UnitWord::Volume(3.785_411_784)),
    ("imperial_gallon", UnitWord::Volume(4.546_09)),
    ("minute", UnitWord::Time(1.0)),
    ("hour", UnitWord::Time(60.0)),
    ("day", UnitWord::Days(1.0)),
    ("week", UnitWord::Days(7.0)),
    ("month", UnitWord::Days(30.0)),
    ("year", UnitWord::Days(365.0)),
    ("cm", UnitWord::Pressure(1.0)),
    ("mm", UnitWord::Pressure(0.1)),
    ("mbar", UnitWord::Pressure(1.019_72)),
    ("inch", UnitWord::Pressure(2.54)),
    ("kpa", UnitWord::Pressure(10.197_2)),
    ("psi", UnitWord::Pressure(70.307)),
    ("celsius", UnitWord::Celsius),
    ("fahrenheit", UnitWord::Fahrenheit),
    ("degree", UnitWord::Degree),
];

/// A number as a word gives it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NumberWord {
    Value(f64),
    /// "a", "un": one before a unit, nothing otherwise.
    Article,
    /// A half, a quarter: adds to the number before it.
    Fraction(f64),
    /// Hundred, thousand, dozen: multiplies its neighbour.
    Scale(f64),
    /// Stands before a number and moves it: "sadhe teen" is 3 + 0.5.
    Shift(f64),
}

/// A day as a word gives it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum DayWord {
    /// Days from the day of the text.
    Offset(i32),
    /// The last such weekday; Monday is 0.
    Weekday(u8),
    /// So many days before or after: the verb tells.
    EitherWay(i32),
    /// -1 for what was done, 0 for what is.
    LastNight,
    /// A month; January is 1.
    Month(u8),
}

/// Everything one phrase of one language stands for.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Meaning {
    pub cues: Cues,
    pub feed: Option<Feed>,
    pub sign: Option<Sign>,
    pub level: Option<GasLevel>,
    pub number: Option<NumberWord>,
    pub unit: Option<UnitWord>,
    pub day: Option<DayWord>,
    /// Index into [`CONTROLS`].
    pub control: Option<u8>,
    /// Index into the lexicon's list of language codes.
    pub language: Option<u16>,
    /// A unit that is many by its form, or only a letter: see the lexicon.
    pub plural: bool,
    pub letter: bool,
}

impl Meaning {
    /// The order to the bot that the phrase is.
    pub fn order(&self) -> Option<&'static Control> {
        self.control.map(|at| &CONTROLS[usize::from(at)].1)
    }
    /// Takes in what the same phrase means elsewhere in the list.
    pub fn join(&mut self, other: &Meaning) {
        self.cues.join(&other.cues);
        self.feed = self.feed.or(other.feed);
        self.sign = self.sign.or(other.sign);
        self.level = self.level.or(other.level);
        self.number = self.number.or(other.number);
        self.unit = self.unit.or(other.unit);
        self.day = self.day.or(other.day);
        self.control = self.control.or(other.control);
        self.language = self.language.or(other.language);
        self.plural |= other.plural;
        self.letter |= other.letter;
    }
}

/// The keys under `[controls]`.
pub static CONTROLS: [(&str, Control); 10] = [
    ("stop", Control::Stop),
    ("start", Control::Start),
    ("help", Control::Help),
    ("undo", Control::Undo),
    ("yes", Control::Yes),
    ("no", Control::No),
    ("forget", Control::Forget),
    ("more", Control::More),
    ("mute", Control::Mute),
    ("language", Control::Language(None)),
];
