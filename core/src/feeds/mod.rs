//! What goes in: the list of feeds, what each is made of, and what a measure of it weighs.
//!
//! Takes a [`Feed`], an amount and a unit as told; gives its [`MakeUp`] ([`make_up()`]), its mass with the doubt in it
//! ([`weigh()`]) and its ADM1 influent ([`influent`]). Never guesses a feed, and never hides how sure a number is: each
//! value stands in `composition.csv`, `digestion.csv`, `handling.csv` or `measures.csv` beside its source.
//!
//! | call | gives |
//! | --- | --- |
//! | [`make_up()`] of a feed | `&'static MakeUp`: solids, COD, nitrogen, densities, pieces, speed, kinds, sources |
//! | [`weigh()`]`(feed, amount, unit, &measures)` | wet mass and its doubt |
//! | [`weigh::pour`]`(amount, unit, &measures)` | litres of water and their doubt |
//! | [`measures::size`]`(measure, country, told)` | litres of one bucket, cup …, and their doubt |
//! | [`influent::of`]`(feed, wet)` | what the model is fed, COD and N kept to round-off |
//!
//! To add a feed: a line in the list below, a row in `composition.csv`, `digestion.csv` and `handling.csv`, each with
//! its source, then print `core/docs/feeds.md` again (the tests say how). To add a measure of a country: a row in
//! `measures.csv`.

pub mod alkali;
pub mod buswell;
pub mod influent;
mod join;
mod make_up;
pub mod measures;
mod table;
pub mod weigh;

pub use make_up::{Densities, Kind, MakeUp, MethaneRead, Piece, Sourced, make_up};
pub(crate) use table::rows;
pub use table::{Sure, TableError};
pub use weigh::{Weighed, weigh};

use crate::ids;

ids!(/// Everything that people put, or ask to put, into a digester.
    Feed {
    // Staples
    CookedRice = "cooked_rice", MaizeMeal = "maize_meal", Bread = "bread", Flatbread = "flatbread", Pasta = "pasta",
    Porridge = "porridge", Potato = "potato", PotatoPeel = "potato_peel", Cassava = "cassava",
    CassavaPeel = "cassava_peel", SweetPotato = "sweet_potato", Yam = "yam", Plantain = "plantain",
    PlantainPeel = "plantain_peel", Flour = "flour", Maize = "maize",
    // Fruit
    Banana = "banana", BananaPeel = "banana_peel", Mango = "mango", Papaya = "papaya", Pineapple = "pineapple",
    CitrusPeel = "citrus_peel", MelonRind = "melon_rind", Avocado = "avocado", Apple = "apple",
    FruitWaste = "fruit_waste",
    // Vegetables
    Tomato = "tomato", Onion = "onion", Cabbage = "cabbage", LeafyGreens = "leafy_greens", Carrot = "carrot",
    Pumpkin = "pumpkin", VegetableWaste = "vegetable_waste",
    // Protein
    Beans = "beans", Lentils = "lentils", Egg = "egg", Meat = "meat", Fish = "fish", Milk = "milk", Whey = "whey",
    Cheese = "cheese",
    // Rich
    CookingOil = "cooking_oil", Fat = "fat", Sugar = "sugar", SweetDrink = "sweet_drink",
    // Kitchen
    FoodWaste = "food_waste", CoffeeGrounds = "coffee_grounds", TeaLeaves = "tea_leaves",
    SpentGrain = "spent_grain", StarchWater = "starch_water",
    // Dung
    CattleManure = "cattle_manure", PigManure = "pig_manure", ChickenManure = "chicken_manure",
    GoatManure = "goat_manure", HorseManure = "horse_manure", HumanWaste = "human_waste", Digestate = "digestate",
    // Plants
    Grass = "grass", Leaves = "leaves", WaterHyacinth = "water_hyacinth", Straw = "straw",
    // Not food for it
    Bone = "bone", Eggshell = "eggshell", Wood = "wood", Soil = "soil", Ash = "ash", Plastic = "plastic",
    Paper = "paper", Soap = "soap", Chemical = "chemical",
});
