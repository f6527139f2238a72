//! The seed box: what a packet is worth, tests, seeds left, the stocktake, what
//! to sow now, what to buy.

use crate::acts::{new_tray, packet, place, sow};
use crate::{Bench, said};
use plumule_app::acts::Act;
use plumule_app::view::{
    Answer, ImportForm, JobKind, PacketForm, PacketView, PlantsRef, RangeView, SeedView,
    StatedDaysForm,
};

impl Bench {
    pub(crate) fn seed(&mut self) -> SeedView {
        let stamp = self.stamp();
        let view = self.app.seed(&stamp).unwrap();
        said::all(&view);
        view
    }

    pub(crate) fn page(&mut self, packet: &str) -> PacketView {
        let stamp = self.stamp();
        let view = self.app.packet(&stamp, packet).unwrap();
        said::all(&view);
        view
    }

    fn add(&mut self, form: PacketForm) -> String {
        self.done(Act::AddPacket { packet: form }).1
    }

    fn worth(&mut self, packet: &str) -> f64 {
        self.page(packet).row.worth.unwrap()
    }
}

fn start(packet: &str, seeds: u32) -> Act {
    Act::StartTest {
        packet: packet.to_owned(),
        seeds,
    }
}

#[test]
fn a_germination_test_moves_what_a_packet_is_worth_once_it_is_closed() {
    let mut bench = Bench::new();
    let old = PacketForm {
        packed_year: Some(2019),
        ..packet()
    };
    let id = bench.add(old);
    let before = bench.page(&id);
    bench.done(start(&id, 20));
    let page = bench.page(&id);
    assert_eq!(page.row.line.seeds_left, Some(80));
    assert!(page.row.testing && page.jobs.is_empty());
    let test = page.tests[0].test.clone();
    bench.wait_days(6);
    assert_eq!(bench.page(&id).jobs[0].kind, JobKind::CountTheTest);
    let round = {
        let stamp = bench.stamp();
        bench.app.round(&stamp).unwrap()
    };
    assert_eq!(round.seed[0].test.as_ref().unwrap().packet, id);
    bench.done(Act::CountTest {
        test: test.clone(),
        sprouted: 11,
    });
    assert!((bench.worth(&id) - before.row.worth.unwrap()).abs() < 0.01);
    bench.wait_days(8);
    let (close, _) = bench.done(Act::CloseTest {
        test: test.clone(),
        sprouted: 19,
    });
    let after = bench.page(&id);
    // 4.4: the test adds its seeds to a Beta of weight 12.
    let prior = before.row.worth.unwrap();
    let expected = (12.0 * prior + 19.0) / 32.0;
    assert!(
        (after.row.worth.unwrap() - expected).abs() < 0.01,
        "{:?}",
        after.row.worth
    );
    assert!(after.row.line.germination > before.row.line.germination);
    // Clopper and Pearson's interval for 19 of 20: 0.7513 to 0.9987 (SciPy's
    // binomtest(19, 20).proportion_ci()).
    let says = said::one(&after.tests[0].says);
    assert!(
        says.contains("19 of 20") && says.contains("75 % and 100 %"),
        "{says}"
    );
    assert!(said::one(&after.tested.unwrap()).contains("19 of 20"));
    // One undo opens it again.
    let stamp = bench.stamp();
    bench.app.undo(&stamp, &close, false).unwrap();
    assert!((bench.worth(&id) - before.row.worth.unwrap()).abs() < 0.01);
}

#[test]
fn a_test_of_years_ago_has_aged_with_its_packet() {
    let mut bench = Bench::new();
    let id = bench.add(packet());
    bench.done(start(&id, 50));
    let test = bench.page(&id).tests[0].test.clone();
    bench.wait_days(14);
    bench.done(Act::CloseTest { test, sprouted: 48 });
    let fresh = bench.worth(&id);
    bench.wait_days(300);
    let same_year = bench.worth(&id);
    bench.wait_days(2000);
    let years_on = bench.worth(&id);
    assert!(
        fresh >= same_year && same_year - years_on > 0.1,
        "{fresh} {same_year} {years_on}"
    );
}

#[test]
fn seeds_left_are_corrected_and_packets_brought_back() {
    let mut bench = Bench::new();
    let id = bench.add(packet());
    let count = |left| Act::CountSeeds {
        packet: id.clone(),
        left,
    };
    bench.done(count(37));
    assert_eq!(bench.page(&id).row.line.seeds_left, Some(37));
    bench.done(start(&id, 10));
    assert_eq!(bench.page(&id).row.line.seeds_left, Some(27));
    let describe = |retired| Act::DescribePacket {
        id: id.clone(),
        packet: packet(),
        retired,
    };
    bench.done(describe(true));
    let seed = bench.seed();
    assert!(seed.packets[0].retired && seed.packets[0].worth.is_none());
    bench.done(describe(false));
    let page = bench.page(&id);
    assert!(!page.row.retired && page.row.line.seeds_left == Some(27));
}

#[test]
fn the_stocktake_goes_through_every_packet_once_and_can_be_left_and_resumed() {
    let mut bench = Bench::new();
    let ids: Vec<String> = (0..3).map(|_| bench.add(packet())).collect();
    assert!(bench.seed().stocktake.left.is_empty());
    bench.wait_days(226);
    let round = {
        let stamp = bench.stamp();
        bench.app.round(&stamp).unwrap()
    };
    said::all(&round);
    assert_eq!(round.seed[0].job.kind, JobKind::Stocktake);
    let stock = |id: &String, found: &str| Act::TakeStock {
        packet: id.clone(),
        found: found.to_owned(),
    };
    bench.done(stock(&ids[0], "keep"));
    bench.done(stock(&ids[1], "test"));
    let mut bench = bench.reopen();
    let seed = bench.seed();
    assert_eq!((seed.stocktake.left.len(), seed.stocktake.done), (1, 2));
    assert_eq!(seed.stocktake.left[0].row.line.packet, ids[2]);
    assert!(bench.page(&ids[1]).row.to_test);
    bench.done(start(&ids[1], 20));
    assert!(!bench.page(&ids[1]).row.to_test);
    let (given, _) = bench.done(stock(&ids[2], "given_away"));
    let seed = bench.seed();
    assert!(seed.stocktake.left.is_empty() && bench.page(&ids[2]).row.retired);
    let stamp = bench.stamp();
    assert!(bench.app.round(&stamp).unwrap().seed.is_empty());
    bench.app.undo(&stamp, &given, false).unwrap();
    assert!(!bench.page(&ids[2]).row.retired);
    assert_eq!(bench.seed().stocktake.left.len(), 1);
}

/// With a last frost on 20 May the tomatoes of late April are in time; in
/// November they are not.
#[test]
fn what_to_sow_now_follows_the_season() {
    let mut bench = Bench::new();
    let id = bench.add(packet());
    let seed = bench.seed();
    assert!(!seed.season_known);
    assert!(said::one(&seed.sow_now[0].say).contains("weeks"));
    let mut garden = {
        let stamp = bench.stamp();
        bench.app.settings(&stamp, false).unwrap().garden
    };
    garden.last_frost = Some("05-20".to_owned());
    bench.done(Act::DescribeGarden { garden });
    let seed = bench.seed();
    assert_eq!(seed.sow_now[0].line.packet, id);
    assert!(seed.sow_now[0].last.is_some());
    bench.done(Act::CountSeeds {
        packet: id.clone(),
        left: 0,
    });
    assert!(bench.seed().sow_now.is_empty());
    bench.done(Act::CountSeeds {
        packet: id,
        left: 5,
    });
    bench.wait_days(200);
    assert!(bench.seed().sow_now.is_empty());
}

#[test]
fn what_is_out_is_suggested_until_it_is_on_the_list() {
    let mut bench = Bench::new();
    let (_, sill) = bench.done(place("Sill", "windowsill", (18.0, 20.0), "bright"));
    let id = bench.add(packet());
    assert!(bench.seed().to_buy.suggested.is_empty());
    bench.done(sow(&id, new_tray(&sill, 1, 12), Vec::new(), 12));
    assert!(bench.seed().to_buy.suggested.is_empty());
    bench.done(Act::CountSeeds {
        packet: id.clone(),
        left: 4,
    });
    let suggested = bench.seed().to_buy.suggested;
    assert!(said::one(&suggested[0].why).contains("4 left"));
    bench.done(Act::TakeStock {
        packet: id,
        found: "used_up".to_owned(),
    });
    let suggested = bench.seed().to_buy.suggested;
    assert!(said::one(&suggested[0].why).contains("None left"));
    bench.done(Act::WantToBuy {
        crop: suggested[0].crop.key.clone(),
        variety: "lantern lane".to_owned(),
        note: "2 packets".to_owned(),
    });
    let to_buy = bench.seed().to_buy;
    assert!(to_buy.suggested.is_empty());
    let item = to_buy.items[0].item.clone();
    assert!(!to_buy.items[0].bought);
    bench.done(Act::SetToBuy {
        item: item.clone(),
        standing: "bought".to_owned(),
    });
    assert!(bench.seed().to_buy.items[0].bought);
    bench.done(Act::SetToBuy {
        item,
        standing: "dropped".to_owned(),
    });
    let to_buy = bench.seed().to_buy;
    assert!(to_buy.items.is_empty() && to_buy.suggested.is_empty());
}

#[test]
fn no_seed_is_saved_of_a_first_cross() {
    let mut bench = Bench::new();
    let (_, sill) = bench.done(place("Sill", "windowsill", (18.0, 20.0), "bright"));
    let mut parents = Vec::new();
    for f1 in [false, true] {
        let id = bench.add(PacketForm { f1, ..packet() });
        bench.done(sow(&id, new_tray(&sill, 1, 12), Vec::new(), 12));
        parents.push(bench.page(&id).sowings[0].plants.clone());
        assert_eq!(bench.page(&id).saving.len(), usize::from(f1));
    }
    let saved = |plants: &PlantsRef| Act::AddPacket {
        packet: PacketForm {
            packed_year: None,
            harvested_year: Some(2026),
            saved_from: Some(plants.clone()),
            ..packet()
        },
    };
    let refused = bench.act(saved(&parents[1])).unwrap_err();
    assert_eq!(refused.code, "saved_from_f1");
    let Answer::Written { packet, .. } = bench.act(saved(&parents[0])).unwrap() else {
        panic!("asked");
    };
    let page = bench.page(&packet.unwrap());
    assert!(said::one(&page.saving[0]).contains("Saved from tomato"));
}

#[test]
fn a_table_is_taken_in_as_one_act_that_one_undo_takes_back() {
    let mut bench = Bench::new();
    bench.add(packet());
    let lines: String = (0..300).map(|i| format!("leek,Stout {i},2025\n")).collect();
    let text = format!("crop,variety,year\nTomato,lantern lane,2025\nleek,Odd,never\n{lines}");
    let (bytes, form) = (text.as_bytes(), ImportForm::default());
    let stamp = bench.stamp();
    let view = bench.app.read_packets(&stamp, bytes, &form).unwrap();
    said::all(&view);
    assert_eq!((view.packets, view.duplicates, view.bad_lines), (300, 1, 1));
    assert_eq!(bench.seed().packets.len(), 1);
    let Answer::Written { act, say, .. } = bench.app.import_packets(&stamp, bytes, &form).unwrap()
    else {
        panic!("asked");
    };
    assert_eq!(said::one(&say), "300 packets noted");
    assert_eq!(bench.seed().packets.len(), 301);
    let again = bench.app.read_packets(&stamp, bytes, &form).unwrap();
    assert_eq!((again.packets, again.duplicates), (0, 301));
    let stamp = bench.stamp();
    let refused = bench.app.import_packets(&stamp, bytes, &form).unwrap_err();
    assert_eq!(refused.code, "nothing_to_write");
    bench.app.undo(&stamp, &act, false).unwrap();
    assert_eq!(bench.seed().packets.len(), 1);
}

/// What is written to a table is read back as it was.
#[test]
fn the_exported_packets_are_all_here_already() {
    let mut bench = Bench::new();
    for variety in ["=1+1", "plain", "'quoted", "two\nlines, \"and\"; more"] {
        bench.add(PacketForm {
            variety: variety.to_owned(),
            ..packet()
        });
    }
    let stamp = bench.stamp();
    let table = bench.app.export(&stamp, "packets").unwrap();
    let view = bench
        .app
        .read_packets(&stamp, &table.bytes, &ImportForm::default())
        .unwrap();
    assert_eq!(
        (view.packets, view.duplicates, view.bad_lines),
        (0, 4, 0),
        "{:?}",
        view.bad
    );
}

#[test]
fn the_days_a_packet_states_are_shown_reckoned_with_and_written_down() {
    let mut bench = Bench::new();
    let at = RangeView {
        min_c: 18.0,
        max_c: 22.0,
    };
    let stated = StatedDaysForm {
        from: 16,
        to: 16,
        at: Some(at),
    };
    let id = bench.add(PacketForm {
        stated_days: Some(stated),
        ..packet()
    });
    let page = bench.page(&id);
    assert_eq!(page.described.stated_days, Some(stated));
    // Tomato takes 8 days at 20 °C (Harrington and Minges 1954).
    let says = said::one(&page.stated.unwrap());
    assert!(
        says.contains("95 % longer") || says.contains("100 % longer"),
        "{says}"
    );
    let line = said::one(&page.timeline[0].say);
    assert!(line.ends_with("by the packet up in 16 days"), "{line}");
    // Without them nothing is said.
    bench.done(Act::DescribePacket {
        id: id.clone(),
        packet: packet(),
        retired: false,
    });
    let page = bench.page(&id);
    assert_eq!((page.stated, page.described.stated_days), (None, None));
}
